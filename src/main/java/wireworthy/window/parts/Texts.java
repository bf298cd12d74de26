package wireworthy.window.parts;

import java.util.regex.Pattern;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;

/** Text in its few sizes. All of it wraps, running text at about 70 characters. */
public final class Texts {
    private static final Pattern FIGURE_AND_UNIT =
            Pattern.compile("(?<=\\d) (?=(?:[kmµ]?[AVWΩ]h?|[cm]?m²?|°C|%|AWG|ohm)(?![A-Za-z]))");

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
        return FIGURE_AND_UNIT.matcher(text).replaceAll("\u00a0");
    }

    private static Label label(final String text, final String... styles) {
        final Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setAccessibleRole(AccessibleRole.TEXT);
        return label;
    }
}
