package wireworthy.window.check;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/**
 * A line in the window, and the labels its words stand in; another line that looks the same can
 * take it over.
 */
record LineNode(Line.Look look, Node node, Label head, Label text) {
    static LineNode of(final Line line) {
        final Label head = Texts.strong(line.head());
        if (line.look() instanceof Line.Look.OfBadge badge) {
            final Badge shown = new Badge(badge.verdict(), badge.sign(), line.text());
            return new LineNode(badge, shown, head, shown);
        }
        if (line.look() instanceof Line.Look.OfNotice notice) {
            final Label text = Texts.paragraph(line.text());
            final Node words = notice.headed() ? saying(head, text) : text;
            return new LineNode(
                    notice, new Notice(notice.verdict(), notice.sign(), words), head, text);
        }
        final Label text = plain((Line.Look.Plain) line.look(), line.text());
        return new LineNode(line.look(), text, head, text);
    }

    private static Node saying(final Label head, final Label text) {
        final VBox words = new VBox(head, text);
        words.getStyleClass().add(Styles.SAYING);
        return words;
    }

    private static Label plain(final Line.Look.Plain look, final String text) {
        return switch (look) {
            case SUBTITLE -> Texts.subtitle(text);
            case SOFT -> Texts.soft(text);
            case PROSE -> Texts.paragraph(text);
        };
    }

    /** Says another line of the same look. */
    void say(final Line line) {
        head.setText(Texts.kept(line.head()));
        text.setText(Texts.kept(line.text()));
        show(true);
    }

    /** Out of sight it is kept for the next line of its look. */
    void show(final boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }
}
