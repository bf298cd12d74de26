package wireworthy.rules;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.facts.Copper;
import wireworthy.facts.TradeFigure;

/** What is taken where a question is silent: the column "unless given" of the vocabulary. */
public final class Assumptions {
    private static final double MM2 = 1e-6;

    private static final List<Quantity> NUMERIC =
            List.of(
                    MARGIN,
                    RESISTIVITY,
                    CONDUCTOR_TEMPERATURE,
                    DROP_LIMIT_SHARE,
                    INSULATION_TEMPERATURE,
                    AMBIENT_TEMPERATURE,
                    BUNDLED,
                    STRANDS,
                    IN_SERIES,
                    IN_PARALLEL,
                    USABLE_SHARE,
                    DAYS_OF_RESERVE,
                    BREAKING_CAPACITY,
                    FUSE_VOLTAGE);

    private Assumptions() {}

    /** The quantities with a number taken unless given. */
    public static List<Quantity> numeric() {
        return NUMERIC;
    }

    /** The SI value taken in this setting, if one is. */
    public static OptionalDouble of(final Quantity quantity, final Setting s) {
        return switch (quantity) {
            case MARGIN -> OptionalDouble.of(TradeFigure.FUSE_MARGIN.value());
            case RESISTIVITY -> resistivity(s);
            case CONDUCTOR_TEMPERATURE ->
                    s.gave(CONDUCTOR_METAL) ? OptionalDouble.of(20) : OptionalDouble.empty();
            case DROP_LIMIT_SHARE ->
                    unlessGiven(DROP_LIMIT, TradeFigure.DROP_LIMIT.value() / 100, s);
            case INSULATION_TEMPERATURE ->
                    OptionalDouble.of(s.table().defaultInsulationTemperature());
            case AMBIENT_TEMPERATURE -> OptionalDouble.of(30);
            case BUNDLED -> OptionalDouble.of(2);
            case STRANDS, IN_SERIES, IN_PARALLEL, DAYS_OF_RESERVE, USABLE_SHARE ->
                    OptionalDouble.of(1);
            case BREAKING_CAPACITY -> s.series().breakingCapacity();
            case FUSE_VOLTAGE ->
                    s.series().voltageRatings().stream().mapToDouble(v -> v).findFirst();
            default -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble resistivity(final Setting s) {
        final boolean plain = !s.gave(CONDUCTOR_TEMPERATURE) && !s.gave(CONDUCTOR_METAL);
        return plain
                ? OptionalDouble.of(Copper.RESISTIVITY_OHM_MM2_PER_M * MM2)
                : OptionalDouble.empty();
    }

    private static OptionalDouble unlessGiven(
            final Quantity given, final double value, final Setting s) {
        return s.gave(given) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
