package wireworthy.window.parts;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A title with a note under it, in a list at the side. */
final class SideEntry extends VBox {
    private static final PseudoClass SELECTED = PseudoClass.getPseudoClass("selected");

    private final Label heading = new Label();
    private final Label under = new Label();
    private final int index;
    private boolean chosen;

    SideEntry(final int index) {
        this.index = index;
        heading.setWrapText(true);
        heading.getStyleClass().add(Styles.SIDE_TITLE);
        under.setWrapText(true);
        under.getStyleClass().add(Styles.SIDE_NOTE);
        getStyleClass().add(Styles.SIDE_ENTRY);
        getChildren().add(heading);
        setAccessibleRole(AccessibleRole.LIST_ITEM);
    }

    /** Says something else; nothing under the title where the note is empty. */
    void say(final String title, final String note) {
        heading.setText(title);
        under.setText(note);
        if (note.isEmpty()) {
            getChildren().remove(under);
        } else if (!getChildren().contains(under)) {
            getChildren().add(under);
        }
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
