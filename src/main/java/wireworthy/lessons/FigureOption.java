package wireworthy.lessons;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.record.SumsInUse;
import wireworthy.rules.Quantity;

/** What can be set in a live figure. All but the cables and loads are givens of a question. */
public enum FigureOption {
    LOAD_POWER(Quantity.LOAD_POWER),
    SUPPLY_VOLTAGE(Quantity.SUPPLY_VOLTAGE),
    EFFICIENCY(Quantity.EFFICIENCY),
    LOADS(Quantity.LOADS),
    CIRCUIT_CURRENT(Quantity.CIRCUIT_CURRENT),
    SECTION(Quantity.SECTION),
    /** How many two-core cables lie together; twice as many conductors are bundled. */
    TWO_CORE_CABLES(Quantity.BUNDLED),
    MARGIN(Quantity.MARGIN),
    CABLE_TABLE(Quantity.CABLE_TABLE),
    FUSE_SERIES(Quantity.FUSE_SERIES),
    ONE_WAY_LENGTH(Quantity.ONE_WAY_LENGTH),
    RESISTIVITY(Quantity.RESISTIVITY),
    DROP_LIMIT(Quantity.DROP_LIMIT),
    BATTERY_VOLTAGE(Quantity.BATTERY_VOLTAGE),
    BATTERY_CAPACITY(Quantity.BATTERY_CAPACITY),
    BATTERY_RESISTANCE(Quantity.BATTERY_RESISTANCE),
    IN_SERIES(Quantity.IN_SERIES),
    IN_PARALLEL(Quantity.IN_PARALLEL),
    USABLE_SHARE(Quantity.USABLE_SHARE),
    FUSE(Quantity.FUSE),
    INSULATION_TEMPERATURE(Quantity.INSULATION_TEMPERATURE),
    INTERNAL_RESISTANCE(Quantity.INTERNAL_RESISTANCE),
    BANK_CAPACITY(Quantity.BANK_CAPACITY),
    ARRAY_POWER(Quantity.ARRAY_POWER),
    SUN_HOURS(Quantity.SUN_HOURS),
    ARRAY_EFFICIENCY(Quantity.ARRAY_EFFICIENCY),
    CHARGE_CURRENT(Quantity.CHARGE_CURRENT),
    CHARGE_TIME(Quantity.CHARGE_TIME),
    CHARGE_EFFICIENCY(Quantity.CHARGE_EFFICIENCY),
    THINNER_SECTION(Quantity.SECTION),
    SECOND_FUSE(Quantity.FUSE),
    SECOND_FUSE_FITTED(Quantity.FUSE, true),
    AMBIENT_TEMPERATURE(Quantity.AMBIENT_TEMPERATURE),
    ENGINE_SPACE(Quantity.ENGINE_SPACE, true),
    IN_THERMAL_INSULATION(Quantity.IN_THERMAL_INSULATION, true),
    OTHER_SECTION(Quantity.SECTION),
    GAUGE(Quantity.GAUGE),
    STRAND_DIAMETER(Quantity.DIAMETER);

    private static final int MOST_DRAWN = 4;

    /** degC; from 160 on a cable has no heating constant. */
    private static final double HOTTEST_INSULATION = 159;

    private final Quantity quantity;
    private final boolean yesOrNo;

    FigureOption(final Quantity quantity) {
        this(quantity, false);
    }

    FigureOption(final Quantity quantity, final boolean yesOrNo) {
        this.quantity = quantity;
        this.yesOrNo = yesOrNo;
    }

    /** The name used in files, such as {@code load-power}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What its values are values of. */
    public Quantity quantity() {
        return quantity;
    }

    /** Whether it may be none at all: a day without sun, or without the engine. */
    boolean mayBeNone() {
        return this == SUN_HOURS || this == CHARGE_TIME;
    }

    /** The most a figure can draw of it. */
    double most() {
        return switch (this) {
            case IN_SERIES, IN_PARALLEL -> MOST_DRAWN;
            case INSULATION_TEMPERATURE -> HOTTEST_INSULATION;
            default -> Double.MAX_VALUE;
        };
    }

    /** Whether it is answered by yes or no. */
    boolean yesOrNo() {
        return yesOrNo;
    }

    /** What holds where a lesson leaves it to the sums in use; empty where it has to say. */
    Optional<Handle> usual() {
        return switch (this) {
            case CABLE_TABLE ->
                    Optional.of(new Handle.Named(quantity, SumsInUse.USUAL.cableTable()));
            case DROP_LIMIT ->
                    Optional.of(
                            new Handle.Fixed(
                                    Quantity.DROP_LIMIT_SHARE, SumsInUse.USUAL.dropLimit()));
            case MARGIN -> Optional.of(new Handle.Fixed(quantity, SumsInUse.USUAL.margin()));
            default -> Optional.empty();
        };
    }

    static Optional<FigureOption> of(final String id) {
        return Stream.of(values()).filter(option -> option.id().equals(id)).findFirst();
    }
}
