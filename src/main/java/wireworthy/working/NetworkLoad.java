package wireworthy.working;

/** A load in a network of cables. */
public sealed interface NetworkLoad {
    String name();

    /** The place where it is connected. */
    String at();

    /** The current it takes at a voltage, A. */
    double current(double volts);

    /** How that current changes with the voltage, A/V. */
    double slope(double volts);

    /**
     * One that takes the same watts at any voltage, such as a converter: the lower the voltage, the
     * more amps.
     */
    record Watts(String name, String at, double watts) implements NetworkLoad {
        @Override
        public double current(final double volts) {
            return watts / volts;
        }

        @Override
        public double slope(final double volts) {
            return -watts / (volts * volts);
        }
    }

    /** One that follows Ohm's law, such as a heater. */
    record Ohms(String name, String at, double ohms) implements NetworkLoad {
        @Override
        public double current(final double volts) {
            return volts / ohms;
        }

        @Override
        public double slope(final double volts) {
            return 1 / ohms;
        }
    }

    /** One that takes the same amps at any voltage. */
    record Amps(String name, String at, double amps) implements NetworkLoad {
        @Override
        public double current(final double volts) {
            return amps;
        }

        @Override
        public double slope(final double volts) {
            return 0;
        }
    }
}
