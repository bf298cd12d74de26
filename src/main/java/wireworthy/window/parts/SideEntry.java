package wireworthy.window.parts;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.jspecify.annotations.Nullable;

/**
 * A title with a note under it, in a list at the side. One flow of text: two labels would each be
 * measured and styled as a control.
 */
final class SideEntry extends TextFlow {
    private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

    private final Text heading = new Text();
    private final Text under = new Text();
    private final int index;
    private boolean chosen;

    SideEntry(final int index) {
        this.index = index;
        heading.getStyleClass().add(Styles.SIDE_TITLE);
        under.getStyleClass().add(Styles.SIDE_NOTE);
        getStyleClass().add(Styles.SIDE_ENTRY);
        getChildren().addAll(heading, under);
        setAccessibleRole(AccessibleRole.LIST_ITEM);
    }

    /** Says something else; nothing under the title where the note is empty. */
    void say(final String title, final String note) {
        heading.setText(title);
        under.setText(note.isEmpty() ? "" : "\n" + note);
        setAccessibleText(note.isEmpty() ? title : title + ", " + note);
    }

    void choose(final boolean now) {
        chosen = now;
        pseudoClassStateChanged(SELECTED, now);
        notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTED);
    }

    @Override
    public @Nullable Object queryAccessibleAttribute(
            final AccessibleAttribute attribute, final Object... parameters) {
        return switch (attribute) {
            case SELECTED -> chosen;
            case INDEX -> index;
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }
}
