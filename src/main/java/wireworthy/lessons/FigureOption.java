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
    DROP_LIMIT(Quantity.DROP_LIMIT);

    private final Quantity quantity;

    FigureOption(final Quantity quantity) {
        this.quantity = quantity;
    }

    /** The name used in files, such as {@code load-power}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What its values are values of. */
    public Quantity quantity() {
        return quantity;
    }

    static Optional<FigureOption> of(final String id) {
        return Stream.of(values()).filter(option -> option.id().equals(id)).findFirst();
    }
}
