package wireworthy.window;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;

/**
 * Two pages side by side, each scrolling for itself; where the text is too large for that, one
 * under the other.
 */
public final class Bench extends StackPane {
    /** Under this width, in text sizes, two pages don't fit side by side. */
    private static final double ROOM_FOR_TWO = 46;

    private final double room;
    private final VBox left;
    private final VBox right;
    private final ScrollPane leftPage;
    private final ScrollPane rightPage;
    private final VBox stack = new VBox();
    private final ScrollPane onePage;
    private final HBox twoPages;
    private final Label ruler = new Label();
    private Optional<VBox> first = Optional.empty();

    /**
     * @param leftName of the left page, for screen readers, as {@code rightName} of the right
     */
    public Bench(final VBox left, final String leftName, final VBox right, final String rightName) {
        this(left, leftName, right, rightName, ROOM_FOR_TWO);
    }

    /**
     * @param room under this width, in text sizes, the pages lie one under the other
     */
    public Bench(
            final VBox left,
            final String leftName,
            final VBox right,
            final String rightName,
            final double room) {
        this.room = room;
        this.left = left;
        this.right = right;
        left.getStyleClass().add(Styles.PAGE);
        right.getStyleClass().add(Styles.PAGE);
        leftPage = Pages.scroll(leftName, left);
        leftPage.getStyleClass().add(Styles.BENCH_LEFT);
        rightPage = Pages.scroll(rightName, right);
        // It takes what is left over; all that is in it need not be measured for that.
        rightPage.setPrefWidth(0);
        HBox.setHgrow(rightPage, Priority.ALWAYS);
        twoPages = new HBox(leftPage, rightPage);
        stack.getStyleClass().add(Styles.ONE_COLUMN);
        onePage = Pages.scroll(leftName + ". " + rightName, stack);
        ruler.setVisible(false);
        ruler.setManaged(false);
        getStyleClass().add(Styles.BENCH);
        getChildren().setAll(twoPages, ruler);
        widthProperty().subscribe(any -> arrange());
        ruler.fontProperty().subscribe(any -> arrange());
    }

    /** A part of the right page that stands above both where they lie one under the other. */
    public void first(final VBox part) {
        first = Optional.of(part);
    }

    private void arrange() {
        final boolean narrow = getWidth() > 0 && getWidth() < room * ruler.getFont().getSize();
        if (narrow && !getChildren().contains(onePage)) {
            leftPage.setContent(new VBox());
            rightPage.setContent(new VBox());
            stack.getChildren().setAll(left, right);
            first.ifPresent(this::toStack);
            getChildren().setAll(onePage, ruler);
        } else if (!narrow && !getChildren().contains(twoPages)) {
            stack.getChildren().clear();
            first.ifPresent(this::toRight);
            leftPage.setContent(left);
            rightPage.setContent(right);
            getChildren().setAll(twoPages, ruler);
        }
    }

    private void toStack(final VBox part) {
        right.getChildren().remove(part);
        part.getStyleClass().add(Styles.PAGE);
        stack.getChildren().add(0, part);
    }

    private void toRight(final VBox part) {
        part.getStyleClass().remove(Styles.PAGE);
        right.getChildren().add(0, part);
    }
}
