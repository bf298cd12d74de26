package wireworthy.window.parts;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import wireworthy.rules.FigureAndUnit;

/**
 * Text in its few sizes. All of it wraps, running text at about 70 characters, and never between a
 * figure and its unit.
 */
public final class Texts {
    private Texts() {}

    /** The heading of a page or card. */
    public static Label title(final String text) {
        return label(text, Styles.TITLE);
    }

    /** A heading within a page. */
    public static Label subtitle(final String text) {
        return label(text, Styles.SUBTITLE);
    }

    /** Running text. */
    public static Label paragraph(final String text) {
        return label(text, Styles.PROSE);
    }

    /** Running text that stands out: the question, the first words of a notice. */
    public static Label strong(final String text) {
        return label(text, Styles.PROSE, Styles.STRONG);
    }

    /** Secondary text. */
    public static Label soft(final String text) {
        return label(text, Styles.PROSE, Styles.SOFT);
    }

    /** The text with each figure kept on one line with its unit. */
    public static String kept(final String text) {
        return FigureAndUnit.kept(text);
    }

    private static Label label(final String text, final String... styles) {
        final Label label = new KeptLabel(kept(text));
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setAccessibleRole(AccessibleRole.TEXT);
        return label;
    }
}
