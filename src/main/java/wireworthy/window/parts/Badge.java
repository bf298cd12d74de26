package wireworthy.window.parts;

/** A verdict in a word or two, with its sign, in a rounded outline: "✓ out and back". */
public final class Badge extends KeptLabel {
    public Badge(final Verdict verdict, final String words) {
        this(verdict, verdict.icon(), words);
    }

    /**
     * @param sign another one than is usual for the verdict
     */
    public Badge(final Verdict verdict, final Icon sign, final String words) {
        super(words);
        setGraphic(sign.node());
        getStyleClass().addAll(Styles.BADGE, verdict.style());
        setWrapText(true);
    }
}
