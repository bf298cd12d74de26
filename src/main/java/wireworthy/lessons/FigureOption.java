package wireworthy.lessons;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
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
    THINNER_SECTION(Quantity.SECTION),
    FUSE(Quantity.FUSE),
    SECOND_FUSE(Quantity.FUSE),
    SECOND_FUSE_FITTED(Quantity.FUSE, true),
    AMBIENT_TEMPERATURE(Quantity.AMBIENT_TEMPERATURE),
    ENGINE_SPACE(Quantity.ENGINE_SPACE, true),
    IN_THERMAL_INSULATION(Quantity.IN_THERMAL_INSULATION, true),
    OTHER_SECTION(Quantity.SECTION),
    GAUGE(Quantity.GAUGE),
    STRAND_DIAMETER(Quantity.DIAMETER);

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

    /** Whether it is answered by yes or no. */
    boolean yesOrNo() {
        return yesOrNo;
    }

    static Optional<FigureOption> of(final String id) {
        return Stream.of(values()).filter(option -> option.id().equals(id)).findFirst();
    }
}
