package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/** Loads side by side on one feed, each with its switch. */
final class LampsOnAFeed implements FigureModel<LampsOnAFeed.Shown> {
    private final Solver solver;
    private final Knob voltage;
    private final List<LoadSwitch> switches;
    private final double mostCurrent;
    private final ObjectBinding<Shown> now;

    /**
     * One branch.
     *
     * @param current A in the branch; 0 while it is off
     * @param passing A in the feed as it comes to this branch: its own and all after it
     */
    record Branch(Handle.Load load, boolean on, double current, double passing) {
        String amps() {
            return on ? Telling.result(Quantity.CIRCUIT_CURRENT, current) : FigureTexts.of("off");
        }
    }

    /**
     * What is drawn.
     *
     * @param voltage V
     * @param branches in the order they leave the feed
     * @param feed A, all branches together
     * @param mostCurrent A, with everything on
     */
    record Shown(double voltage, List<Branch> branches, double feed, double mostCurrent)
            implements Told {
        public Shown {
            branches = List.copyOf(branches);
        }

        String feedAmps() {
            return Telling.result(Quantity.CIRCUIT_CURRENT, feed);
        }

        String volts() {
            return Telling.result(Quantity.SUPPLY_VOLTAGE, voltage);
        }

        @Override
        public String words() {
            final List<Branch> on = branches.stream().filter(Branch::on).toList();
            if (on.isEmpty()) {
                return FigureTexts.of("lamps.nothing");
            }
            final String list =
                    on.stream()
                            .map(each -> each.load().name() + " " + each.amps())
                            .collect(Collectors.joining(", "));
            return FigureTexts.of(
                    "lamps.words", "volts", volts(), "list", list, "amps", feedAmps());
        }
    }

    LampsOnAFeed(final Figure figure, final Solver solver) {
        this.solver = solver;
        voltage =
                Knob.of(
                        FigureTexts.of("supply-voltage"),
                        figure.handle(FigureOption.SUPPLY_VOLTAGE));
        switches = LoadSwitch.of(figure.handle(FigureOption.LOADS));
        mostCurrent = current(switches.stream().map(LoadSwitch::load).toList(), voltage.smallest());
        now = Bindings.createObjectBinding(this::shown, moving());
    }

    private Observable[] moving() {
        final List<Observable> all = new ArrayList<>(List.of(voltage.stop()));
        switches.forEach(each -> all.add(each.on()));
        return all.toArray(Observable[]::new);
    }

    /** The switches in the order of the branches. */
    List<LoadSwitch> switches() {
        return switches;
    }

    @Override
    public List<Knob> knobs() {
        return Stream.of(voltage).filter(Knob::moves).toList();
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        final List<Branch> branches =
                IntStream.range(0, switches.size()).mapToObj(this::branch).toList();
        return new Shown(voltage.value(), branches, branches.get(0).passing(), mostCurrent);
    }

    private Branch branch(final int place) {
        final LoadSwitch own = switches.get(place);
        final double current = current(on(switches.subList(place, place + 1)), voltage.value());
        final List<Handle.Load> from = on(switches.subList(place, switches.size()));
        return new Branch(own.load(), own.on().get(), current, current(from, voltage.value()));
    }

    private static List<Handle.Load> on(final List<LoadSwitch> some) {
        return some.stream().filter(each -> each.on().get()).map(LoadSwitch::load).toList();
    }

    private double current(final List<Handle.Load> loads, final double volts) {
        if (loads.isEmpty()) {
            return 0;
        }
        final Asking asking = new Asking().with(Quantity.SUPPLY_VOLTAGE, volts);
        loads.forEach(asking::with);
        return asking.value(solver, Quantity.CIRCUIT_CURRENT);
    }
}
