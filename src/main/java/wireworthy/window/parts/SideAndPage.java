package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/**
 * A list at the side and the page chosen from it; where the text is too large for both, one of the
 * two, and a button that changes between them.
 */
public final class SideAndPage extends BorderPane {
    /** Under this width, in text sizes, there is no room for both. */
    private static final double ROOM_FOR_BOTH = 42;

    private final ToggleButton contents;
    private final HBox bar;
    private final Node side;
    private final Label ruler = new Label();
    private Node page = new VBox();
    private boolean narrow;

    /**
     * @param side stays the same
     * @param name of the list, on the button
     */
    public SideAndPage(final Node side, final String name) {
        this.side = side;
        contents = new ToggleButton(name);
        contents.getStyleClass().setAll(Styles.CONTENTS);
        contents.selectedProperty().subscribe(any -> arrange());
        bar = new HBox(contents);
        bar.getStyleClass().add(Styles.CONTENTS_BAR);
        ruler.setVisible(false);
        ruler.setManaged(false);
        getChildren().add(ruler);
        widthProperty().subscribe(any -> measure());
        ruler.fontProperty().subscribe(any -> measure());
    }

    /** The page shown. */
    public Node page() {
        return page;
    }

    /** Shows another page, and not the list where there is no room for both. */
    public void show(final Node other) {
        page = other;
        contents.setSelected(contents.isSelected() && isTypedIn());
        arrange();
    }

    /** Shows the list where there is room for one of the two. */
    public void showSide() {
        contents.setSelected(narrow);
    }

    /** While something is looked for in the list it stays, and so does the keyboard. */
    private boolean isTypedIn() {
        return getScene() != null
                && getScene().getFocusOwner() instanceof TextInputControl field
                && field.getParent() == side;
    }

    private void measure() {
        narrow = getWidth() > 0 && getWidth() < ROOM_FOR_BOTH * ruler.getFont().getSize();
        arrange();
    }

    private void arrange() {
        final boolean listAlone = narrow && contents.isSelected();
        setTop(narrow ? bar : null);
        if (listAlone) {
            setLeft(null);
            setCenter(side);
        } else {
            setCenter(page);
            setLeft(narrow ? null : side);
        }
    }
}
