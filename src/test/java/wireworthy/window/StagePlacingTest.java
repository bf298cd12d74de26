package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.record.WindowBounds;

class StagePlacingTest {
    private static final List<Rectangle2D> SCREENS =
            List.of(new Rectangle2D(0, 0, 1920, 1080), new Rectangle2D(1920, 0, 1280, 800));

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "stays where it was,       100, 50, 1280, 860,    100, 50, 1280, 860",
        "stays on a second screen, 1950, 0, 1024, 700,    1950, 0, 1024, 700",
        "comes back from outside,  5000, 50, 1280, 860,   640, 50, 1280, 860",
        "comes back from above,    -50, -300, 1280, 860,  0, 0, 1280, 860",
        "shrinks to the screen,    0, 0, 4000, 3000,      0, 0, 1920, 1080",
        "never becomes a sliver,   0, 0, 5, 5,            0, 0, 640, 480"
    })
    void theWindow(
            final String what,
            final double x,
            final double y,
            final double width,
            final double height,
            final double newX,
            final double newY,
            final double newWidth,
            final double newHeight) {
        assertThat(StagePlacing.onScreen(new WindowBounds(x, y, width, height), SCREENS))
                .isEqualTo(new WindowBounds(newX, newY, newWidth, newHeight));
    }

    @Test
    void aMaximisedWindowStaysSoAndKeepsWhereItStoodBefore() {
        final WindowBounds before = new WindowBounds(100, 50, 1000, 700);
        final WindowBounds filling = new WindowBounds(0, 0, 1920, 1080, true);
        assertThat(StagePlacing.kept(Optional.of(before), filling))
                .isEqualTo(before.maximised(true));
        assertThat(StagePlacing.kept(Optional.of(before.maximised(true)), before))
                .isEqualTo(before);
        assertThat(StagePlacing.onScreen(before.maximised(true), SCREENS).maximised()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"1280, 720", "1366, 728", "1024, 700", "1280, 880", "900, 1200"})
    void forTheFirstTimeItFillsAScreenTooSmallForIt(final double width, final double height) {
        assertThat(StagePlacing.first(new Rectangle2D(10, 24, width, height)))
                .contains(new WindowBounds(10, 24, width, height));
    }

    @ParameterizedTest
    @CsvSource({"1920, 1040", "1280, 900"})
    void forTheFirstTimeItHasItsOwnSizeWhereThatFits(final double width, final double height) {
        assertThat(StagePlacing.first(new Rectangle2D(0, 0, width, height))).isEmpty();
    }
}
