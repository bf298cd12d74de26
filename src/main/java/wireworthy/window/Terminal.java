package wireworthy.window;

import javafx.scene.AccessibleRole;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wireworthy.window.parts.Styles;

/** One terminal of the strip: a screw head over a label, screwed down while its place is in use. */
final class Terminal extends ToggleButton {
    Terminal(final Place place, final int number) {
        super(place.title());
        setId(place.id());
        getStyleClass().setAll(Styles.TERMINAL);
        setGraphic(screw());
        setAccessibleRole(AccessibleRole.TAB_ITEM);
        setAccessibleText(WindowTexts.of("place", "title", place.title(), "number", number));
    }

    /** The place in use stays in use when its terminal is pressed again. */
    @Override
    public void fire() {
        if (!isSelected()) {
            super.fire();
        }
    }

    private static Region screw() {
        final Region slot = new Region();
        slot.getStyleClass().add(Styles.SLOT);
        final StackPane head = new StackPane(slot);
        head.getStyleClass().add(Styles.SCREW);
        return head;
    }
}
