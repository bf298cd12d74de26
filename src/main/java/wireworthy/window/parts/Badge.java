package wireworthy.window.parts;

import javafx.scene.control.Label;

/** A verdict in a word or two, with its sign, in a rounded outline: "✓ out and back". */
public final class Badge extends Label {
    public Badge(final Verdict verdict, final String words) {
        super(words, verdict.icon().node());
        getStyleClass().addAll(Styles.BADGE, verdict.style());
        setWrapText(true);
    }
}
