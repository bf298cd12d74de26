package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.facts.FuseSeriesTable;
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
        kind(givens);
        source.voltsInto(givens);
        together.ifPresent(amps -> givens.worked(CIRCUIT_CURRENT, amps));
        this.sums = Sums.of(solver, givens, FIND, main.answers());
    }

    /** Where no series was typed: the first one that has the main fuse typed. */
    private void kind(final Givens givens) {
        if (!given.has(FUSE_SERIES)
                && Understood.of(MAIN_FUSE, given.text(MAIN_FUSE))
                        instanceof Understood.Figure figure) {
            FuseSeriesTable.risingToMain().stream()
                    .filter(each -> each.holds(figure.read().value()))
                    .findFirst()
                    .ifPresent(each -> givens.typed(FUSE_SERIES, each.id()));
        }
    }

    CheckedPart part() {
        return sums.part(Faults.caution(fault()));
    }

    FuseWindow window() {
        return sums.window(sums.value(FUSE_CEILING), given.has(FUSE_SERIES));
    }

    FuseFault fault() {
        return Faults.of(
                CheckedVehicle.WHOLE,
                source.atBattery(),
                sums,
                window().series(),
                OptionalDouble.empty());
    }
}
