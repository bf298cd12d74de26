package wireworthy.vehicle;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import wireworthy.rules.Quantity;

/** What may be given for each part of a vehicle, in the order a form would ask for it. */
public final class Vocabulary {
    /** Battery or bank and charging; the inner resistance is that of the whole bank. */
    public static final List<Quantity> SUPPLY =
            List.of(
                    SUPPLY_VOLTAGE,
                    BATTERY_VOLTAGE,
                    BATTERY_CAPACITY,
                    IN_SERIES,
                    IN_PARALLEL,
                    USABLE_SHARE,
                    INTERNAL_RESISTANCE,
                    DAYS_OF_RESERVE,
                    CHARGE_CURRENT,
                    CHARGE_EFFICIENCY,
                    SUN_HOURS,
                    ARRAY_EFFICIENCY);

    /**
     * The main fuse and the cable from the battery to the fuse board. The sections that can be
     * bought stand here for every circuit that names none of its own.
     */
    public static final List<Quantity> MAIN =
            List.of(
                    MAIN_FUSE,
                    FUSE_SERIES,
                    FUSE_VOLTAGE,
                    BREAKING_CAPACITY,
                    MARGIN,
                    ONE_WAY_LENGTH,
                    SECTION,
                    CABLE_TABLE,
                    INSULATION_TEMPERATURE,
                    AMBIENT_TEMPERATURE,
                    ENGINE_SPACE,
                    BUNDLED,
                    IN_THERMAL_INSULATION,
                    RETURN,
                    DROP_LIMIT,
                    AVAILABLE_SECTIONS);

    /** The cable of a circuit, where it lies, and its fuse. */
    public static final List<Quantity> CIRCUIT =
            List.of(
                    ONE_WAY_LENGTH,
                    SECTION,
                    CABLE_TABLE,
                    INSULATION_TEMPERATURE,
                    AMBIENT_TEMPERATURE,
                    ENGINE_SPACE,
                    BUNDLED,
                    IN_THERMAL_INSULATION,
                    RETURN,
                    RESISTANCE,
                    FUSE,
                    FUSE_SERIES,
                    FUSE_VOLTAGE,
                    BREAKING_CAPACITY,
                    MARGIN,
                    DROP_LIMIT,
                    LOOP_LENGTH,
                    CONDUCTOR_METAL,
                    RESISTIVITY,
                    CONDUCTOR_TEMPERATURE,
                    RESISTANCE_PER_LENGTH,
                    AVAILABLE_SECTIONS);

    /** A stretch of a network. */
    public static final List<Quantity> STRETCH =
            List.of(ONE_WAY_LENGTH, SECTION, RESISTANCE_PER_LENGTH, LOOP_RESISTANCE);

    private Vocabulary() {}
}
