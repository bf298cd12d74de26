package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.record.WindowBounds;

/** A window keeps its size where the toolkit shrinks it to the least there may be. */
class HeldSizeTest extends ApplicationTest {
    private Stage stage;

    @Override
    public void start(final Stage onStage) {
        stage = onStage;
        stage.setScene(new Scene(new StackPane(), 900, 700));
        stage.setMinWidth(400);
        stage.setMinHeight(300);
        StagePlacing.place(stage, new WindowBounds(20, 30, 900, 700));
        stage.show();
    }

    @Override
    public void stop() {
        stage.setMinWidth(0);
        stage.setMinHeight(0);
    }

    @Test
    void shrunkJustAfterItOpenedItIsPutBack() throws TimeoutException {
        interact(
                () -> {
                    HeldSize.hold(stage);
                    shrink();
                });
        isBack();
    }

    @Test
    void shrunkByADialogOfTheSystemItIsPutBackAndTheChoiceIsGivenOn() throws TimeoutException {
        interact(
                () ->
                        assertThat(
                                        HeldSize.during(
                                                stage,
                                                () -> {
                                                    shrink();
                                                    return "chosen";
                                                }))
                                .isEqualTo("chosen"));
        isBack();
    }

    private void shrink() {
        stage.setWidth(400);
        stage.setHeight(300);
    }

    private void isBack() throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                10, TimeUnit.SECONDS, () -> stage.getWidth() == 900 && stage.getHeight() == 700);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "made as small as it may be,      900, 700, false, 640, 480, false, true",
        "made smaller by a person,        900, 700, false, 800, 480, false, false",
        "no larger wanted,                640, 480, false, 640, 480, false, false",
        "made larger,                     900, 700, false, 950, 700, false, false",
        "taken from the whole screen,     900, 700, true, 800, 600, false, true",
        "still on the whole screen,       900, 700, true, 1280, 860, true, false",
        "put on the whole screen,         900, 700, false, 1280, 860, true, false"
    })
    void sizeIsLostWhen(
            final String what,
            final double width,
            final double height,
            final boolean maximised,
            final double nowWidth,
            final double nowHeight,
            final boolean nowMaximised,
            final boolean lost) {
        assertThat(
                        HeldSize.isLost(
                                new WindowBounds(0, 0, width, height, maximised),
                                new WindowBounds(0, 0, nowWidth, nowHeight, nowMaximised),
                                640,
                                480))
                .isEqualTo(lost);
    }
}
