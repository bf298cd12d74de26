package wireworthy.rules;

import java.util.List;

/** The nominal voltages of vehicle and boat systems, V. */
public final class Voltages {
    private static final double BETWEEN_12_AND_24 = 18;
    private static final double BETWEEN_24_AND_48 = 36;

    /** The systems there are, V. */
    public static final List<Double> SYSTEMS = List.of(12.0, 24.0, 48.0);

    private Voltages() {}

    /** 12, 24 or 48 V, whichever system a working voltage belongs to. */
    public static double nominal(final double volts) {
        if (volts < BETWEEN_12_AND_24) {
            return 12;
        }
        return volts < BETWEEN_24_AND_48 ? 24 : 48;
    }

    /** The system voltage most easily read for this one: 24 V for 12 V, half for the others. */
    public static double otherSystem(final double volts) {
        return volts < BETWEEN_12_AND_24 ? 24 : nominal(volts) / 2;
    }

    /**
     * The highest voltage a system is charged at, V: 14.8 V a 12 V block, as lead and lithium
     * chargers commonly go. From memory, unconfirmed.
     */
    public static double highestCharging(final double volts) {
        return Math.max(volts, nominal(volts) / 12 * 14.8);
    }
}
