package wireworthy.window.figures;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
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
import wireworthy.working.Worked;

/** A feed that goes over into a thinner cable, and the fuses that guard the two. */
final class WhereTheCableThins implements FigureModel<WhereTheCableThins.Shown> {
    private final Solver solver;
    private final Knob current;
    private final Knob feed;
    private final Knob thinner;
    private final Knob fuse;
    private final Knob secondFuse;
    private final Tick second;
    private final Knob margin;
    private final Handle.Named table;
    private final Handle.Named series;
    private final double mostAmps;
    private final ObjectBinding<Shown> now;

    /**
     * A length of cable.
     *
     * @param ampacity A
     * @param floor A, for the fuse that guards it
     * @param smallest the smallest standard rating from floor to ampacity; empty where none fits
     */
    record Stretch(String section, double ampacity, double floor, OptionalDouble smallest) {
        String amps() {
            return Telling.exact(Quantity.AMPACITY, ampacity);
        }
    }

    /**
     * What is drawn.
     *
     * @param current A, the same in both cables
     * @param guards the fuse at the board, then the one where the cable thins, if it is fitted
     * @param thicknesses mm2 of the feed and of the thinner cable
     * @param mostAmps A, where the scale of the fuses ends
     */
    record Shown(
            double current,
            Stretch feed,
            Stretch thinner,
            List<Guard> guards,
            List<Double> thicknesses,
            double mostAmps)
            implements Told {
        public Shown {
            guards = List.copyOf(guards);
            thicknesses = List.copyOf(thicknesses);
        }

        Guard board() {
            return guards.get(0);
        }

        /** The last fuse before the thinner cable. */
        Guard beforeThinner() {
            return guards.get(guards.size() - 1);
        }

        boolean twoFuses() {
            return guards.size() > 1;
        }

        String amps() {
            return Telling.result(Quantity.CIRCUIT_CURRENT, current);
        }

        boolean sound() {
            return guards.stream().allMatch(Guard::fits);
        }

        /** What comes of it, the worst first. */
        String verdict() {
            if (sound()) {
                return FigureTexts.of(
                        twoFuses() ? "thins.each" : "thins.both", "fuse", board().amps());
            }
            return guards.stream()
                    .filter(guard -> !guard.fits())
                    .sorted(Comparator.comparing(Guard::overCable).reversed())
                    .map(Guard::verdict)
                    .collect(Collectors.joining(". "));
        }

        @Override
        public String words() {
            final String cables =
                    FigureTexts.of(
                            "thins.cables",
                            "amps",
                            amps(),
                            "feed",
                            feed.section(),
                            "feed-amps",
                            feed.amps(),
                            "thin",
                            thinner.section(),
                            "thin-amps",
                            thinner.amps());
            final String fuses =
                    guards.stream().map(Shown::between).collect(Collectors.joining(" "));
            return sound()
                    ? cables + " " + fuses + " " + FigureTexts.of("so", "verdict", verdict())
                    : verdict() + ". " + change() + " " + cables + " " + fuses;
        }

        private static String between(final Guard guard) {
            return FigureTexts.of(
                    "thins.fuse",
                    "place",
                    guard.place(),
                    "amps",
                    guard.amps(),
                    "floor",
                    guard.floorAmps(),
                    "ceiling",
                    guard.ceilingAmps(),
                    "cable",
                    guard.cable());
        }

        private String change() {
            final boolean all =
                    guards.stream().allMatch(Guard::roomBetween)
                            && thinner.smallest().isPresent()
                            && feed.smallest().isPresent();
            if (!all) {
                return FigureTexts.of("thins.thicker");
            }
            return FigureTexts.of(twoFuses() ? "thins.rating" : "thins.rating-or-fuse");
        }
    }

    WhereTheCableThins(final Figure figure, final Solver solver) {
        this.solver = solver;
        table = figure.named(FigureOption.CABLE_TABLE);
        series = figure.named(FigureOption.FUSE_SERIES);
        current =
                Knob.of(
                        FigureTexts.of("circuit-current"),
                        figure.handle(FigureOption.CIRCUIT_CURRENT));
        feed =
                Knob.of(
                        FigureTexts.of("thins.feed", "table", table.name()),
                        figure.handle(FigureOption.SECTION));
        thinner =
                Knob.of(FigureTexts.of("thins.into"), figure.handle(FigureOption.THINNER_SECTION));
        fuse = Knob.of(FigureTexts.of("thins.board-fuse"), figure.handle(FigureOption.FUSE));
        secondFuse =
                Knob.of(
                        FigureTexts.of("thins.second-fuse"),
                        figure.handle(FigureOption.SECOND_FUSE));
        second =
                Tick.of(
                        FigureTexts.of("thins.second"),
                        figure.yes(FigureOption.SECOND_FUSE_FITTED));
        margin = Knob.of(FigureTexts.of("margin"), figure.handle(FigureOption.MARGIN));
        mostAmps = mostAmps();
        now = Bindings.createObjectBinding(this::shown, moving());
    }

    private Observable[] moving() {
        return Stream.concat(all().map(Knob::stop), Stream.of(second.on()))
                .toArray(Observable[]::new);
    }

    private Stream<Knob> all() {
        return Stream.of(current, feed, thinner, fuse, secondFuse, margin);
    }

    private double mostAmps() {
        return DoubleStream.of(
                        stretch(feed, feed.greatest()).ampacity(),
                        fuse.greatest(),
                        secondFuse.greatest())
                .max()
                .orElseThrow();
    }

    @Override
    public List<Knob> knobs() {
        return all().filter(Knob::moves).toList();
    }

    @Override
    public List<Tick> ticks() {
        return List.of(second);
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        final Stretch first = stretch(feed, feed.value());
        final Stretch last = stretch(thinner, thinner.value());
        return new Shown(
                current.value(),
                first,
                last,
                guards(first, last),
                List.of(feed.value(), thinner.value()),
                mostAmps);
    }

    private List<Guard> guards(final Stretch first, final Stretch last) {
        if (second.on().get()) {
            return List.of(
                    guard(FigureTexts.of("thins.at-board"), fuse, first),
                    guard(FigureTexts.of("thins.at-thin"), secondFuse, last));
        }
        final Stretch weaker = last.ampacity() < first.ampacity() ? last : first;
        return List.of(guard(FigureTexts.of("thins.at-board"), fuse, weaker));
    }

    private static Guard guard(final String place, final Knob rating, final Stretch weakest) {
        return new Guard(
                place, rating.value(), weakest.floor(), weakest.ampacity(), weakest.section());
    }

    private Stretch stretch(final Knob knob, final double section) {
        final Worked worked =
                new Asking()
                        .with(current)
                        .with(Quantity.SECTION, section)
                        .with(margin)
                        .with(table)
                        .with(series)
                        .find(solver, Quantity.FUSE_FLOOR, Quantity.FUSE_CEILING, Quantity.FUSE);
        return new Stretch(
                knob.text(section),
                worked.value(Quantity.FUSE_CEILING).orElseThrow(),
                worked.value(Quantity.FUSE_FLOOR).orElseThrow(),
                worked.value(Quantity.FUSE));
    }
}
