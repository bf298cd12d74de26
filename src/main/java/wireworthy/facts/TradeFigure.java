package wireworthy.facts;

/**
 * A single figure of the trade with its source.
 *
 * @param unit empty for a plain factor
 */
public record TradeFigure(double value, String unit, Source source) {

    /**
     * Fuse over circuit current, at 25 degC; hot places need more, and the maker's data go first.
     */
    public static final TradeFigure FUSE_MARGIN =
            new TradeFigure(
                    1.25,
                    "",
                    new Source("Fuse makers' application notes (rule of thumb)", Provenance.READ));

    /** What may be lost of the supply voltage, out and back. */
    public static final TradeFigure DROP_LIMIT =
            new TradeFigure(
                    3,
                    "%",
                    new Source("Limit used in vehicle conversions", Provenance.COMMON_PRACTICE));

    /** Surroundings the ampacity tables are made for. */
    public static final TradeFigure TABLE_AMBIENT =
            new TradeFigure(30, "degC", new Source("33 CFR 183.425 Table 5", Provenance.READ));

    /** What an ampacity is multiplied by inside wall insulation, on more than half a metre. */
    public static final TradeFigure IN_THERMAL_INSULATION =
            new TradeFigure(0.5, "", new Source("BS 7671 regulation 523.9", Provenance.MEMORY));
}
