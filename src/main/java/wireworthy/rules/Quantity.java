package wireworthy.rules;

import static wireworthy.rules.Dimension.*;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a figure is about: the vocabulary of the trade, with symbol and kind of unit. */
public enum Quantity {
    VOLTAGE("V", Dimension.VOLTAGE),
    CURRENT("I", Dimension.CURRENT),
    POWER("P", Dimension.POWER),
    RESISTANCE("R", Dimension.RESISTANCE),
    CHARGE("Q", Dimension.CHARGE),
    TIME("t", Dimension.TIME),
    ENERGY("E", Dimension.ENERGY),
    SUPPLY_VOLTAGE("Vs", Dimension.VOLTAGE),
    LOAD_POWER("P", Dimension.POWER),
    LOAD_CURRENT("I", Dimension.CURRENT),
    LOAD_COUNT("n", COUNT),
    LOADS("", LIST),
    EFFICIENCY("η", SHARE),
    SUPPLY_CURRENT("I", Dimension.CURRENT),
    START_MULTIPLE("s", FACTOR),
    SHARE_OF_TIME("", SHARE),
    START_CURRENT("", Dimension.CURRENT),
    CIRCUIT_CURRENT("I", Dimension.CURRENT),
    PARALLEL_RESISTANCE("R", Dimension.RESISTANCE),
    SERIES_RESISTANCE("R", Dimension.RESISTANCE),
    MARGIN("m", FACTOR),
    FUSE_FLOOR("", Dimension.CURRENT),
    FUSE_CEILING("", Dimension.CURRENT),
    FUSE_SERIES("", NAME),
    FUSE("In", Dimension.CURRENT),
    FUSE_VOLTAGE("", Dimension.VOLTAGE),
    BREAKING_CAPACITY("", Dimension.CURRENT),
    MAIN_FUSE("In", Dimension.CURRENT),
    ONE_WAY_LENGTH("L", LENGTH),
    LOOP_LENGTH("", LENGTH),
    RETURN("", NAME),
    SECTION("A", AREA),
    GAUGE("", Dimension.GAUGE),
    DIAMETER("d", Dimension.DIAMETER),
    STRANDS("", COUNT),
    CONDUCTOR_METAL("", NAME),
    RESISTIVITY("ρ", Dimension.RESISTIVITY),
    CONDUCTOR_TEMPERATURE("T", TEMPERATURE),
    RESISTANCE_PER_LENGTH("r", Dimension.RESISTANCE_PER_LENGTH),
    LOOP_RESISTANCE("R", Dimension.RESISTANCE),
    DROP("ΔV", Dimension.VOLTAGE),
    DROP_PERCENT("", SHARE),
    DROP_LIMIT("", Dimension.VOLTAGE),
    /**
     * The drop limit as a share of the supply; written as {@code drop-limit} with a per cent sign.
     */
    DROP_LIMIT_SHARE("", SHARE),
    VOLTAGE_AT_LOAD("V", Dimension.VOLTAGE),
    POWER_LOST("", Dimension.POWER),
    SECTION_FOR_DROP("", AREA),
    LONGEST_RUN("", LENGTH),
    CABLE_TABLE("", NAME),
    INSULATION_TEMPERATURE("", TEMPERATURE),
    AMBIENT_TEMPERATURE("", TEMPERATURE),
    ENGINE_SPACE("", NAME),
    BUNDLED("", COUNT),
    AMBIENT_FACTOR("k1", FACTOR),
    BUNDLE_FACTOR("k2", FACTOR),
    IN_THERMAL_INSULATION("", NAME),
    TABLE_AMPACITY("", Dimension.CURRENT),
    AMPACITY("Iz", Dimension.CURRENT),
    AMPACITY_NEEDED("", Dimension.CURRENT),
    SECTION_FOR_AMPACITY("", AREA),
    STANDARD_SECTION("", AREA),
    AVAILABLE_SECTIONS("", LIST),
    BATTERY_VOLTAGE("", Dimension.VOLTAGE),
    BATTERY_CAPACITY("C", Dimension.CHARGE),
    /** Inner resistance of one battery of a bank. */
    BATTERY_RESISTANCE("", Dimension.RESISTANCE),
    IN_SERIES("", COUNT),
    IN_PARALLEL("", COUNT),
    BANK_VOLTAGE("", Dimension.VOLTAGE),
    BANK_CAPACITY("", Dimension.CHARGE),
    BANK_ENERGY("", Dimension.ENERGY),
    USABLE_SHARE("d", SHARE),
    USABLE_ENERGY("", Dimension.ENERGY),
    RUNTIME("t", Dimension.TIME),
    DAILY_ENERGY("", Dimension.ENERGY),
    DAYS_OF_RESERVE("", FACTOR),
    CAPACITY_NEEDED("", Dimension.CHARGE),
    DAYS_WITHOUT_CHARGE("", FACTOR),
    SUN_HOURS("", Dimension.TIME),
    ARRAY_POWER("", Dimension.POWER),
    ARRAY_EFFICIENCY("", SHARE),
    CHARGE_CURRENT("", Dimension.CURRENT),
    CHARGE_EFFICIENCY("", SHARE),
    CHARGE_TIME("", Dimension.TIME),
    CHARGE_ENERGY("", Dimension.ENERGY),
    SOLAR_ENERGY("", Dimension.ENERGY),
    DAILY_BALANCE("", Dimension.ENERGY),
    INTERNAL_RESISTANCE("", Dimension.RESISTANCE),
    TERMINAL_VOLTAGE("", Dimension.VOLTAGE),
    SHORT_CIRCUIT_CURRENT("", Dimension.CURRENT),
    FUSE_TIME_SHORTEST("", SHORT_TIME),
    FUSE_TIME_LONGEST("", SHORT_TIME),
    ADIABATIC_TIME("", SHORT_TIME),
    ADIABATIC_K("k", Dimension.ADIABATIC_K);

    private static final Map<String, Quantity> BY_ID =
            Arrays.stream(values()).collect(Collectors.toMap(Quantity::id, Function.identity()));

    private final String symbol;
    private final Dimension dimension;
    private final String id;

    Quantity(final String symbol, final Dimension dimension) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.id = name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The id used in questions, such as {@code load-current}. */
    public String id() {
        return id;
    }

    /** The id in words, such as "load current", in the language in use. */
    public String words() {
        return Words.of(id);
    }

    /** Its name in English whatever the language in use, for files. */
    public String inFiles() {
        return Words.inFiles(id);
    }

    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Whether it holds a number rather than a name or a list. */
    public boolean numeric() {
        return dimension != NAME && dimension != LIST;
    }

    /** Whether each load of a list has its own. */
    public boolean ofLoad() {
        return switch (this) {
            case LOAD_POWER, LOAD_CURRENT, LOAD_COUNT, EFFICIENCY, SUPPLY_CURRENT -> true;
            case START_MULTIPLE, SHARE_OF_TIME, RESISTANCE -> true;
            default -> false;
        };
    }

    /** Whether the trade picks it from a row of standard sizes rather than works it out. */
    public boolean chosen() {
        return switch (this) {
            case FUSE, MAIN_FUSE, GAUGE, SECTION_FOR_AMPACITY, STANDARD_SECTION -> true;
            default -> false;
        };
    }

    /** The quantity of this id, if it is one a question may name. */
    public static Optional<Quantity> of(final String id) {
        return Optional.ofNullable(BY_ID.get(id))
                .filter(quantity -> quantity != DROP_LIMIT_SHARE && quantity != SHARE_OF_TIME);
    }
}
