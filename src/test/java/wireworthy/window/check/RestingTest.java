package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.window.parts.Styles;

/** The room kept while one typed is given back although the keyboard stays in its field. */
class RestingTest extends ApplicationTest {
    private static final List<Line> MANY = Collections.nCopies(20, Line.soft("A way out"));
    private static final List<Line> FEW = List.of(Line.soft("Sound"));

    private final Told<List<Line>> told = new Told<>(Function.identity());
    private TextField typed;
    private ScrollPane page;
    private StackPane place;
    private Resting resting;

    @Override
    public void start(final Stage stage) {
        typed = new TextField();
        page = new ScrollPane();
        place = new StackPane(page);
        resting = new Resting(place);
        final VBox results = new VBox(high(1000), told, typed, high(2000));
        results.getStyleClass().add(Styles.RESULTS);
        page.setContent(results);
        stage.setScene(new Scene(place, 600, 600));
        stage.show();
        typed.requestFocus();
    }

    private static Region high(final double height) {
        final Region region = new Region();
        region.setMinHeight(height);
        return region;
    }

    private void show(final List<Line> lines) {
        interact(() -> told.show(lines));
        settle();
    }

    private void settle() {
        WaitForAsyncUtils.waitForFxEvents();
        interact(
                () -> {
                    place.applyCss();
                    place.layout();
                });
    }

    @Test
    void theRoomIsGivenBackByItselfAMomentAfterTheResultsCame() throws TimeoutException {
        show(MANY);
        final double many = told.getHeight();
        show(FEW);
        assertThat(told.getHeight()).isEqualTo(many);
        interact(resting::begin);
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> told.getHeight() < many / 2);
    }

    @Test
    void whatIsTypedInStaysWhereItIsSeen() {
        show(MANY);
        show(FEW);
        interact(() -> page.setVvalue(0.4));
        final double before = top();
        final double room = told.getHeight();
        interact(resting::giveBack);
        settle();
        assertThat(told.getHeight()).isLessThan(room / 2);
        assertThat(top()).isCloseTo(before, within(2.0));
    }

    private double top() {
        settle();
        return typed.localToScene(typed.getLayoutBounds()).getMinY();
    }
}
