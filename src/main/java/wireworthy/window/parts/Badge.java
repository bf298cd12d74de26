package wireworthy.window.parts;

/** A verdict in a word or two, with its sign, in a rounded outline: "✓ out and back". */
public final class Badge extends KeptLabel {
    public Badge(final Verdict verdict, final String words) {
        super(words);
        setGraphic(verdict.icon().node());
        getStyleClass().addAll(Styles.BADGE, verdict.style());
        setWrapText(true);
    }
}
