package wireworthy.window.figures;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** What comes of the figure, in a line with its sign, across the drawing. */
final class VerdictLine extends Label {
    /** The signs used so far; flipping to and fro makes none anew. */
    private final Map<Verdict, Node> signs = new EnumMap<>(Verdict.class);

    VerdictLine() {
        getStyleClass().add(Styles.VERDICT);
        setAlignment(Pos.TOP_CENTER);
        setWrapText(true);
    }

    /** Says it. */
    void say(final boolean sound, final String words) {
        say(sound ? Verdict.SOUND : Verdict.UNSOUND, words);
    }

    /** Says how it stands. */
    void say(final Verdict verdict, final String words) {
        if (!getStyleClass().contains(verdict.style())) {
            Stream.of(Verdict.values()).forEach(each -> getStyleClass().remove(each.style()));
            getStyleClass().add(verdict.style());
            setGraphic(signs.computeIfAbsent(verdict, each -> each.icon().node()));
        }
        setText(Texts.kept(words));
    }

    /** Takes its place: the whole width of a drawing, from y down; lengths in text sizes. */
    void lay(final double em, final double wide, final double y) {
        applyCss();
        resizeRelocate(0, y * em, wide * em, prefHeight(wide * em));
    }
}
