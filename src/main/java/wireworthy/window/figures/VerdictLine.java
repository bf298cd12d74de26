package wireworthy.window.figures;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.text.Text;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** What comes of the figure, in a line with its sign, across the drawing. */
final class VerdictLine extends Label {
    /** How high a capital is in our font. */
    private static final double CAPITAL = 0.7;

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

    /** The sign stands beside the first of several lines. */
    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        final Node sign = getGraphic();
        if (sign != null && lookup(".text") instanceof Text words) {
            final double capital = CAPITAL * getFont().getSize();
            final double top = words.getBoundsInParent().getMinY();
            final double middle = top + words.getBaselineOffset() - capital / 2;
            // Laid elsewhere it would ask for another layout, and so on without end.
            sign.setTranslateY(middle - sign.getLayoutY() - sign.getLayoutBounds().getHeight() / 2);
        }
    }

    /** Takes its place: the whole width of a drawing, from y down; lengths in text sizes. */
    void lay(final double em, final double wide, final double y) {
        applyCss();
        resizeRelocate(0, y * em, wide * em, prefHeight(wide * em));
    }
}
