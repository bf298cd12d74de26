package wireworthy.window.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.Found;
import wireworthy.vehicle.check.FuseFault;
import wireworthy.vehicle.check.FuseWindow;
import wireworthy.vehicle.check.VoltsLost;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Scrolling;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.working.Caution;
import wireworthy.working.Telling;

/** What comes out for a circuit: what could start a fire first. */
final class CircuitResults extends KeptBox implements Refreshing {
    /** What most people work out on paper. */
    private static final List<Quantity> FIRST =
            List.of(CIRCUIT_CURRENT, FUSE_FLOOR, FUSE_CEILING, DROP, DROP_PERCENT);

    private static final List<Quantity> OTHERS =
            List.of(
                    FUSE,
                    TABLE_AMPACITY,
                    AMBIENT_FACTOR,
                    BUNDLE_FACTOR,
                    AMPACITY,
                    LOOP_RESISTANCE,
                    VOLTAGE_AT_LOAD,
                    POWER_LOST,
                    SECTION_FOR_DROP,
                    STANDARD_SECTION,
                    LONGEST_RUN,
                    DAILY_ENERGY);

    private final VehicleModel model;
    private final int index;
    private final Standing standing = new Standing();
    private final Told<List<Caution>> cautions = new Told<>(Cautioned::all);
    private final Redrawn<FuseWindow> fuse = new Redrawn<>(FuseSection::of);
    private final Told<Optional<String>> fault =
            new Told<>(it -> it.map(Line::soft).map(List::of).orElse(List.of()));
    private final Redrawn<Optional<AlongCable>> along =
            new Redrawn<>(it -> it.map(AlongCable::drawn).orElse(List.of()));
    private final Told<VoltsLost> volts = new Told<>(VoltsSection::told);

    CircuitResults(final VehicleModel model, final int index) {
        this.model = model;
        this.index = index;
        getStyleClass().add(Styles.RESULTS);
        getChildren()
                .setAll(
                        standing,
                        cautions,
                        fuse,
                        fault,
                        volts,
                        along,
                        Texts.subtitle(CheckTexts.of("sums")),
                        Texts.soft(CheckTexts.of("sums.what")),
                        figures(FIRST),
                        new Disclosure(CheckTexts.of("more-sums"), () -> figures(OTHERS)),
                        new WorkingSection(this::workings),
                        new Disclosure(
                                CheckTexts.of("measured"), () -> new MeasuredForm(model, index)),
                        Texts.soft(CheckTexts.of("mind")));
        refresh();
    }

    /** What belongs in sight before all else. */
    Standing standing() {
        return standing;
    }

    private OwnFigures figures(final List<Quantity> quantities) {
        return new OwnFigures(
                EntryList.circuit(model, index),
                quantities,
                it -> model.checking().circuit(index).flatMap(circuit -> found(circuit, it)));
    }

    /** Of a fuse what comes out is the one that fits, not the one that was typed. */
    private static Optional<Found> found(final CheckedCircuit circuit, final Quantity quantity) {
        final OptionalDouble fitting = circuit.fuse().fitting();
        return quantity == FUSE && circuit.fuse().known() && fitting.isPresent()
                ? Optional.of(
                        new Found(FUSE, fitting, Telling.result(FUSE, fitting.getAsDouble()), ""))
                : circuit.found(quantity);
    }

    private Workings workings() {
        return model.checking()
                .circuit(index)
                .map(it -> new Workings(it.working(), it.assumed()))
                .orElse(Workings.NONE);
    }

    /** What a short circuit behind its fuse asks of it; not known, it is said once, at the main. */
    private void showFault(final CheckedVehicle checked) {
        fault.show(
                checked.faults().stream()
                        .filter(it -> it.index() == index && it.current().isPresent())
                        .findFirst()
                        .map(FuseFault::text));
    }

    private void show(final CheckedCircuit circuit) {
        standing.show(circuit);
        cautions.show(Standing.others(circuit.cautions()));
        fuse.show(circuit.fuse());
        volts.show(VoltsSection.of(circuit));
        along.show(circuit.network().map(it -> AlongCable.of(circuit, it)));
    }

    /** A caution that comes or goes above must not move away what is being typed. */
    @Override
    public void refresh() {
        MeasuredForm.typedIn(this)
                .ifPresentOrElse(field -> Scrolling.keeping(field, this::showAll), this::showAll);
    }

    private void showAll() {
        model.checking().circuit(index).ifPresent(this::show);
        model.checking()
                .done()
                .get()
                .filter(it -> index < it.circuits().size())
                .ifPresent(this::showFault);
        Refresh.all(getChildren());
    }
}
