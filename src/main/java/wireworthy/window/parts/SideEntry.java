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

    private final Label under = new Label();
    private final String title;
    private final int index;
    private boolean chosen;

    SideEntry(final String title, final int index) {
        this.title = title;
        this.index = index;
        final Label heading = new Label(title);
        heading.setWrapText(true);
        heading.getStyleClass().add(Styles.SIDE_TITLE);
        under.setWrapText(true);
        under.getStyleClass().add(Styles.SIDE_NOTE);
        getStyleClass().add(Styles.SIDE_ENTRY);
        getChildren().add(heading);
        setAccessibleRole(AccessibleRole.LIST_ITEM);
    }

    /** Says something else under the title; nothing where the note is empty. */
    void note(final String note) {
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
