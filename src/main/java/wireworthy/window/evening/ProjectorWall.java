package wireworthy.window.evening;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import wireworthy.window.Shell;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;

/**
 * The whole window as it is thrown on a wall: what is shown is sized by the window, so that it can
 * be read from the back row; the bar under it is the leader's, in the usual size.
 */
class ProjectorWall extends BorderPane {
    private static final List<Double> STEPS = List.of(0.6, 0.7, 0.85, 1.0, 1.2, 1.4, 1.7);
    private static final int USUAL = 3;

    /** How high the bar is, in its text sizes. */
    private static final double BAR = 4;

    private final double across;
    private final double down;
    private final Label ruler = new Label();
    private final StackPane wall = new StackPane();
    private int step = USUAL;
    private double textSize;

    /**
     * @param across how many text sizes the wall is wide at least, as {@code down} how many it is
     *     high
     */
    ProjectorWall(final double across, final double down) {
        this.across = across;
        this.down = down;
        getStyleClass().add(Styles.PROJECTOR);
        ruler.setVisible(false);
        ruler.setManaged(false);
        getChildren().add(ruler);
        setCenter(wall);
        wall.setMinSize(0, 0);
        widthProperty().subscribe(any -> size());
        heightProperty().subscribe(any -> size());
        ruler.fontProperty().subscribe(any -> size());
    }

    /** Puts something on the wall. */
    final void show(final Node node) {
        wall.getChildren().setAll(node);
    }

    final void larger() {
        step = Math.min(STEPS.size() - 1, step + 1);
        size();
    }

    final void smaller() {
        step = Math.max(0, step - 1);
        size();
    }

    /** The size of text on the wall, in pixels. */
    final double textSize() {
        return textSize;
    }

    /** Never smaller than what the window has elsewhere. */
    private void size() {
        if (getWidth() > 0 && getHeight() > 0) {
            final double least = ruler.getFont().getSize();
            final double high = getHeight() - BAR * least;
            final double fitting = Math.min(getWidth() / across, high / down);
            textSize = Math.max(least, fitting * STEPS.get(step));
            wall.setStyle("-fx-font-size: " + textSize + "px;");
            sized();
        }
    }

    /** Called when text has another size. */
    void sized() {}

    /** What every wall has at the end of its bar. */
    record Ends(ProjectorLook look, Button leave) {}

    final Ends ends(final Shell shell, final Runnable leave) {
        return new Ends(
                new ProjectorLook(this, shell), Buttons.plain(ProjectorTexts.of("leave"), leave));
    }
}
