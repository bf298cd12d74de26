package wireworthy.facts;

/** Aluminium as a conductor. */
public final class Aluminium {
    /** Resistivity at 20 degC, in ohm mm2/m. */
    public static final double RESISTIVITY_OHM_MM2_PER_M = 0.0282;

    /** Growth of resistance by degC, referred to 20 degC. */
    public static final double ALPHA_20 = 0.00403;

    private Aluminium() {}

    /** Where both are published. */
    public static Source source() {
        return new Source("Handbook values for aluminium conductor", Provenance.MEMORY);
    }
}
