package wireworthy.vehicle;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wireworthy.rules.Quantity;

/** What can be said of one load, by its key in the file. */
public enum LoadEntry {
    POWER(Quantity.LOAD_POWER),
    CURRENT(Quantity.LOAD_CURRENT),
    RESISTANCE(Quantity.RESISTANCE),
    COUNT(Quantity.LOAD_COUNT),
    EFFICIENCY(Quantity.EFFICIENCY),
    START_MULTIPLE(Quantity.START_MULTIPLE),
    SHARE_OF_TIME(Quantity.SHARE_OF_TIME),
    /** Another way to say the share of time: how long it runs in a day of 24 hours. */
    HOURS_A_DAY(Quantity.TIME),
    /** Volts measured at the load once it is built, with everything of the circuit on. */
    MEASURED(Quantity.VOLTAGE_AT_LOAD);

    private final Quantity quantity;

    LoadEntry(final Quantity quantity) {
        this.quantity = quantity;
    }

    /** The key in the file, such as {@code start-multiple}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Quantity quantity() {
        return quantity;
    }

    /** The entry of a key. */
    public static Optional<LoadEntry> of(final String key) {
        return Arrays.stream(values()).filter(entry -> entry.key().equals(key)).findFirst();
    }
}
