package wireworthy.facts;

/** Copper as a conductor. */
public final class Copper {
    /** Resistivity at 20 degC, in ohm mm2/m. */
    public static final double RESISTIVITY_OHM_MM2_PER_M = 0.0172;

    /** Growth of resistance by degC, referred to 20 degC. */
    public static final double ALPHA_20 = 0.00393;

    /** The constant 226 of the adiabatic formula of IEC 60949, in A s^0.5/mm2. */
    public static final double ADIABATIC_K = 226;

    /** The constant 234.5 of the adiabatic formula of IEC 60949, in degC. */
    public static final double ADIABATIC_BETA = 234.5;

    /** Of annealed copper at 20 degC, in kg/m3. */
    public static final double DENSITY_KG_PER_M3 = 8890;

    private Copper() {}

    /** Where the resistivity is published. */
    public static Source source() {
        return new Source("OpenStax College Physics 2e, chapter 20", Provenance.READ);
    }

    /** Where the density is published. */
    public static Source densitySource() {
        return new Source("IEC 60028", Provenance.MEMORY);
    }

    /** Where the growth with temperature is published. */
    public static Source alphaSource() {
        return new Source("IEC 60028", Provenance.MEMORY);
    }

    /** Where the two adiabatic constants are published. */
    public static Source adiabaticSource() {
        return new Source("IEC 60949", Provenance.MEMORY);
    }
}
