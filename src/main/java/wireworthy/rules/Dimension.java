package wireworthy.rules;

/**
 * What kind of thing a figure measures. Values are SI inside the program (temperature in degrees
 * Celsius); {@code unit} is the field unit shown at the edge and {@code scale} the SI value of one
 * such unit.
 */
public enum Dimension {
    VOLTAGE("V", 1),
    CURRENT("A", 1),
    POWER("W", 1),
    RESISTANCE("ohm", 1),
    /** Coulomb inside, amp-hours at the edge. */
    CHARGE("Ah", 3600),
    /** Seconds inside, hours at the edge. */
    TIME("h", 3600),
    /** Seconds inside and at the edge. */
    SHORT_TIME("s", 1),
    /** Joule inside, watt-hours at the edge. */
    ENERGY("Wh", 3600),
    /** A share of one inside, per cent at the edge. */
    SHARE("%", 0.01),
    /** A plain factor. */
    FACTOR("", 1),
    /** A whole number of things. */
    COUNT("", 1),
    LENGTH("m", 1),
    DIAMETER("mm", 1e-3),
    AREA("mm2", 1e-6),
    /** ASTM B258 gauge number; 0, -1, -2, -3 are 1/0, 2/0, 3/0, 4/0. */
    GAUGE("AWG", 1),
    RESISTIVITY("ohm mm2/m", 1e-6),
    RESISTANCE_PER_LENGTH("mohm/m", 1e-3),
    /** Degrees Celsius inside and at the edge. */
    TEMPERATURE("degC", 1),
    /** Heating constant of a conductor, IEC 60949. */
    ADIABATIC_K("A s^0.5/mm2", 1e6),
    /** One of a closed list of names. */
    NAME("", 1),
    /** A list of loads or sections. */
    LIST("", 1);

    private final String unit;
    private final double scale;

    Dimension(final String unit, final double scale) {
        this.unit = unit;
        this.scale = scale;
    }

    /** The field unit as written in a question. */
    public String unit() {
        return unit;
    }

    /** The SI value of one field unit. */
    public double scale() {
        return scale;
    }
}
