package wireworthy.window.figures;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Verdict;

/** What comes of the figure, in a line with its sign, across the drawing. */
final class VerdictLine extends Label {
    VerdictLine() {
        getStyleClass().add(Styles.VERDICT);
        setAlignment(Pos.TOP_CENTER);
        setWrapText(true);
    }

    /** Says it. */
    void say(final boolean sound, final String words) {
        final Verdict verdict = sound ? Verdict.SOUND : Verdict.UNSOUND;
        getStyleClass().removeAll(Verdict.SOUND.style(), Verdict.UNSOUND.style());
        getStyleClass().add(verdict.style());
        setGraphic(verdict.icon().node());
        setText(words);
    }

    /** Takes its place: the whole width of a drawing, from y down; lengths in text sizes. */
    void lay(final double em, final double wide, final double y) {
        applyCss();
        resizeRelocate(0, y * em, wide * em, prefHeight(wide * em));
    }
}
