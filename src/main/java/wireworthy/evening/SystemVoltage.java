package wireworthy.evening;

import java.util.Arrays;
import java.util.Optional;

/** The systems a sheet may speak of, each with the voltages that belong to it. */
public enum SystemVoltage {
    V12(12, 16),
    V24(24, 32),
    V48(48, 64);

    private final int volts;
    private final double upTo;

    SystemVoltage(final int volts, final double upTo) {
        this.volts = volts;
        this.upTo = upTo;
    }

    /** The nominal volts. */
    public int volts() {
        return volts;
    }

    /** The system a voltage belongs to: 13.4 V is of a 12 V system; none from 64 V on. */
    public static Optional<SystemVoltage> of(final double volts) {
        return Arrays.stream(values()).filter(each -> volts < each.upTo).findFirst();
    }
}
