package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.facts.TradeFigure;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Part;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vocabulary;
import wireworthy.working.Solver;

/** The main fuse, and the cable from the battery to the fuse board. */
final class MainCheck {
    private static final List<Quantity> FIND =
            List.of(
                    FUSE_FLOOR,
                    MAIN_FUSE,
                    TABLE_AMPACITY,
                    AMPACITY,
                    FUSE_CEILING,
                    FUSE,
                    LOOP_RESISTANCE,
                    DROP,
                    DROP_PERCENT,
                    POWER_LOST,
                    SECTION_FOR_AMPACITY,
                    STANDARD_SECTION);
    private static final List<Quantity> AS_TYPED =
            Vocabulary.MAIN.stream().filter(each -> each != MAIN_FUSE).toList();

    private static final String CURRENT = "given." + CIRCUIT_CURRENT.id();
    private static final String FUSE_FIELD = "given.main-fuse";

    private static final double MARGIN_TAKEN = TradeFigure.FUSE_MARGIN.value();

    private final Entries<Quantity> given;
    private final Source source;
    private final Sums sums;

    /**
     * @param together A that can run at the same time; empty where not known
     */
    MainCheck(
            final Part main,
            final Source source,
            final OptionalDouble together,
            final Solver solver) {
        this.given = main.given();
        this.source = source;
        final Givens givens = new Givens().of(given, AS_TYPED);
        givens.typedAs(FUSE, MAIN_FUSE, given.text(MAIN_FUSE));
        kind(givens, together);
        source.voltsInto(givens);
        together.ifPresent(amps -> givens.worked(CIRCUIT_CURRENT, amps));
        final Sums worked = named(Sums.of(solver, givens, FIND, main.answers()));
        final Unprotected open = new Unprotected(solver, worked, given.has(SECTION));
        this.sums = worked.with(List.of(), open.notes()).cautioned(open.cautions());
    }

    /** The current is not asked for here: it is that of the circuits. */
    private static Sums named(final Sums sums) {
        final boolean asked = sums.notes().stream().anyMatch(note -> note.where().equals(CURRENT));
        return asked
                ? sums.with(List.of(), List.of(FieldNote.wrong(CURRENT, Said.of("no-together"))))
                : sums;
    }

    /** Where no series was typed: the first that has the main fuse typed, or reaches the floor. */
    private void kind(final Givens givens, final OptionalDouble together) {
        if (given.has(FUSE_SERIES)) {
            return;
        }
        final OptionalDouble fuse = figure(MAIN_FUSE);
        final double floor = together.orElse(0) * figure(MARGIN).orElse(MARGIN_TAKEN);
        FuseSeriesTable.risingToMain().stream()
                .filter(
                        each ->
                                fuse.isPresent()
                                        ? each.holds(fuse.getAsDouble())
                                        : each.atOrAbove(floor).isPresent())
                .findFirst()
                .ifPresent(each -> givens.typed(FUSE_SERIES, each.id()));
    }

    private OptionalDouble figure(final Quantity quantity) {
        return Understood.of(quantity, given.text(quantity)) instanceof Understood.Figure figure
                ? OptionalDouble.of(figure.read().value())
                : OptionalDouble.empty();
    }

    CheckedPart part(final Earlier earlier) {
        return earlier.told("main", sums).part(Faults.caution(fault()), notes());
    }

    private List<FieldNote> notes() {
        final List<FieldNote> notes =
                new ArrayList<>(window().notMade(FUSE_FIELD).stream().toList());
        if (!given.has(MAIN_FUSE)) {
            notes.add(FieldNote.missing(FUSE_FIELD, Said.of("no-main-fuse")));
        }
        if (!given.has(SECTION)) {
            notes.add(FieldNote.missing("given.section", Said.of("no-main-section")));
        }
        return notes;
    }

    FuseWindow window() {
        return sums.window(sums.value(FUSE_CEILING), true);
    }

    VoltsLost volts() {
        return VoltsLost.of(sums);
    }

    FuseFault fault() {
        return Faults.of(
                CheckedVehicle.WHOLE,
                "",
                source.atBattery(),
                sums,
                window(),
                OptionalDouble.empty());
    }
}
