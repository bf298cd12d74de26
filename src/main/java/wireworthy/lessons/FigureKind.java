package wireworthy.lessons;

import static wireworthy.lessons.FigureOption.*;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The live figures there are. */
public enum FigureKind {
    POWER_CURRENT_VOLTAGE,
    CONVERTER_CURRENT,
    LAMPS_ON_A_FEED,
    FUSE_BETWEEN,
    VOLTS_ALONG_THE_RUN,
    BANK_BUILDER,
    FUSE_OR_CABLE,
    DAYS_ENERGY,
    WHERE_THE_CABLE_THINS,
    FOUR_WAYS,
    DERATED_AMPACITY,
    SECTION_TO_SCALE;

    /** The id used in files, such as {@code fuse-between}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What a lesson sets in it: all of these. */
    public List<FigureOption> options() {
        return switch (this) {
            case POWER_CURRENT_VOLTAGE -> List.of(LOAD_POWER, SUPPLY_VOLTAGE);
            case CONVERTER_CURRENT -> List.of(LOAD_POWER, EFFICIENCY, SUPPLY_VOLTAGE);
            case LAMPS_ON_A_FEED -> List.of(SUPPLY_VOLTAGE, LOADS);
            case FUSE_BETWEEN ->
                    List.of(
                            CIRCUIT_CURRENT,
                            SECTION,
                            TWO_CORE_CABLES,
                            MARGIN,
                            CABLE_TABLE,
                            FUSE_SERIES);
            case VOLTS_ALONG_THE_RUN ->
                    List.of(
                            CIRCUIT_CURRENT,
                            SECTION,
                            ONE_WAY_LENGTH,
                            SUPPLY_VOLTAGE,
                            DROP_LIMIT,
                            RESISTIVITY);
            case BANK_BUILDER ->
                    List.of(
                            BATTERY_VOLTAGE,
                            BATTERY_CAPACITY,
                            IN_SERIES,
                            IN_PARALLEL,
                            USABLE_SHARE,
                            BATTERY_RESISTANCE);
            case FUSE_OR_CABLE ->
                    List.of(
                            FUSE,
                            FUSE_SERIES,
                            SECTION,
                            CABLE_TABLE,
                            INSULATION_TEMPERATURE,
                            SUPPLY_VOLTAGE,
                            INTERNAL_RESISTANCE,
                            ONE_WAY_LENGTH,
                            RESISTIVITY);
            case DAYS_ENERGY ->
                    List.of(
                            SUPPLY_VOLTAGE,
                            LOADS,
                            BANK_CAPACITY,
                            USABLE_SHARE,
                            ARRAY_POWER,
                            SUN_HOURS,
                            ARRAY_EFFICIENCY,
                            CHARGE_CURRENT,
                            CHARGE_TIME,
                            CHARGE_EFFICIENCY);
            case WHERE_THE_CABLE_THINS ->
                    List.of(
                            CIRCUIT_CURRENT,
                            SECTION,
                            THINNER_SECTION,
                            FUSE,
                            SECOND_FUSE_FITTED,
                            SECOND_FUSE,
                            MARGIN,
                            CABLE_TABLE,
                            FUSE_SERIES);
            case FOUR_WAYS ->
                    List.of(
                            CIRCUIT_CURRENT,
                            SECTION,
                            ONE_WAY_LENGTH,
                            SUPPLY_VOLTAGE,
                            DROP_LIMIT,
                            RESISTIVITY,
                            CABLE_TABLE);
            case DERATED_AMPACITY ->
                    List.of(
                            SECTION,
                            AMBIENT_TEMPERATURE,
                            TWO_CORE_CABLES,
                            ENGINE_SPACE,
                            IN_THERMAL_INSULATION,
                            CABLE_TABLE,
                            FUSE_SERIES);
            case SECTION_TO_SCALE ->
                    List.of(SECTION, OTHER_SECTION, GAUGE, STRAND_DIAMETER, RESISTIVITY);
        };
    }

    static Optional<FigureKind> of(final String id) {
        return Stream.of(values()).filter(kind -> kind.id().equals(id)).findFirst();
    }

    static List<String> ids() {
        return Stream.of(values()).map(FigureKind::id).toList();
    }
}
