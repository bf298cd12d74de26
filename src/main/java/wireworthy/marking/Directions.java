package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/** Whether a figure lies on the wrong side of what half or twice a given would already ask for. */
final class Directions {
    /** Givens that everyone has a feeling for, the best known first. */
    private static final List<Quantity> GIVENS =
            List.of(ONE_WAY_LENGTH, LOOP_LENGTH, LOAD_POWER, LOAD_CURRENT, CIRCUIT_CURRENT);

    private static final double CLEARLY = 0.02;

    private final Worked worked;
    private final Ref ref;
    private final double value;
    private final double right;

    private Directions(final Worked worked, final Ref ref, final double value, final double right) {
        this.worked = worked;
        this.ref = ref;
        this.value = value;
        this.right = right;
    }

    static Optional<Check> check(
            final Worked worked, final Ref ref, final Reading.Read read, final double right) {
        final Directions directions = new Directions(worked, ref, read.value(), right);
        return GIVENS.stream()
                .map(Ref::circuit)
                .filter(given -> worked.question().figures().containsKey(given))
                .map(directions::from)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Check> from(final Ref given) {
        final double half = with(given, 0.5);
        final double twice = with(given, 2);
        final boolean rises = half < right && twice > right;
        final boolean falls = half > right && twice < right;
        if (!rises && !falls) {
            return Optional.empty();
        }
        if (value < Math.min(half, twice) * (1 - CLEARLY)) {
            return Optional.of(said("low", given, Math.min(half, twice), rises));
        }
        return value > Math.max(half, twice) * (1 + CLEARLY)
                ? Optional.of(said("high", given, Math.max(half, twice), falls))
                : Optional.empty();
    }

    private double with(final Ref given, final double factor) {
        final double[] values = worked.values().clone();
        final int place = worked.plan().placeOf(given).orElseThrow();
        values[place] *= factor;
        return worked.plan().run(values)[worked.plan().placeOf(ref).orElseThrow()];
    }

    private Check said(final String side, final Ref given, final double at, final boolean halved) {
        final boolean thin =
                halved && side.equals("low") && ref.quantity().dimension() == Dimension.AREA;
        final boolean run = given.quantity().dimension() == Dimension.LENGTH;
        final String key = thin ? (run ? "thin-for-run" : "thin-for-load") : side;
        return Check.of("direction." + key + (halved ? ".half" : ".twice"))
                .with("{given}", given.quantity().words())
                .with("{limit}", Checks.text(ref.quantity(), at));
    }
}
