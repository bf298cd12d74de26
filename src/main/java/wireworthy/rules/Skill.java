package wireworthy.rules;

import java.util.Locale;

/** What a line of a working exercises; each line belongs to exactly one skill. */
public enum Skill {
    UNITS_AND_PREFIXES,
    CURRENT_FROM_POWER,
    CURRENT_THROUGH_A_CONVERTER,
    ADDING_LOADS,
    OUT_AND_BACK_LENGTH,
    CONDUCTOR_SECTION,
    RESISTANCE_OF_A_CABLE,
    DROP,
    DROP_IN_PERCENT,
    VOLTAGE_AT_THE_LOAD,
    SECTION_FOR_A_DROP_LIMIT,
    NEXT_STANDARD_SIZE,
    AMPACITY_FROM_A_TABLE,
    DERATING,
    WHICH_LIMIT_GOVERNS,
    FUSE_FLOOR,
    FUSE_CEILING,
    FUSE_CHOICE,
    WHERE_FUSES_GO,
    POWER_LOST,
    CHANGE_OF_SYSTEM_VOLTAGE,
    SERIES_AND_PARALLEL_BATTERIES,
    ENERGY_AND_RUNTIME,
    CHARGING,
    SHORT_CIRCUIT_AND_PROTECTION,
    CIRCUIT_IDEAS;

    /** The id used in files, such as {@code current-from-power}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The name in words, such as "current from power". */
    public String words() {
        return Words.of(id());
    }
}
