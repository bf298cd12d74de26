package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Verdict;

/** While one types, what is said changes its words; what stands in the window stays. */
class ToldTest extends ApplicationTest {
    private static final List<Line> UNKNOWN =
            List.of(Line.subtitle("Volts"), Line.soft("Not known yet."));
    private static final List<Line> LOST =
            List.of(
                    Line.subtitle("Volts"),
                    Line.notice(Verdict.CAUTION, "0.4 V are lost."),
                    Line.prose("Ways out"),
                    Line.prose("A larger section"));

    private final Told<List<Line>> told = new Told<>(Function.identity());

    private final Region under = new Region();

    @Override
    public void start(final Stage stage) {
        final VBox results = new VBox(told, under, field("beside"));
        results.getStyleClass().add(Styles.RESULTS);
        final VBox all = new VBox(field("typed"), field("elsewhere"), results);
        stage.setScene(new Scene(all, 600, 600));
        stage.show();
    }

    private static TextField field(final String id) {
        final TextField field = new TextField();
        field.setId(id);
        return field;
    }

    private void goTo(final String field) {
        interact(lookup("#" + field).query()::requestFocus);
    }

    private double show(final List<Line> lines) {
        interact(() -> told.show(lines));
        return settled();
    }

    /** Where what stands under it has come to stand. */
    private double settled() {
        WaitForAsyncUtils.waitForFxEvents();
        interact(() -> told.getScene().getRoot().layout());
        return under.getLayoutY();
    }

    @Test
    void nothingUnderItJumpsWhileAFigureIsTyped() {
        final double few = show(UNKNOWN);
        final double many = show(LOST);
        assertThat(many).isGreaterThan(few);
        assertThat(show(UNKNOWN)).isEqualTo(many);
        assertThat(show(List.of())).isEqualTo(many);
        assertThat(show(LOST)).isEqualTo(many);
    }

    @Test
    void theRoomIsGivenBackOnceTheKeyboardIsElsewhere() {
        final double few = show(UNKNOWN);
        final double many = show(LOST);
        assertThat(show(UNKNOWN)).isEqualTo(many);
        goTo("beside");
        assertThat(settled()).as("where one is about to go").isEqualTo(many);
        goTo("elsewhere");
        assertThat(settled()).isEqualTo(few);
    }

    private List<Node> seen() {
        return told.getChildren().stream().filter(Node::isVisible).toList();
    }

    private List<String> words() {
        return seen().stream()
                .map(it -> it instanceof Notice notice ? notice.getChildren().get(1) : it)
                .map(it -> ((Labeled) it).getText())
                .toList();
    }

    @Test
    void whatComesAgainFindsItsPlaceAndItsOrder() {
        show(UNKNOWN);
        show(LOST);
        assertThat(words())
                .containsExactly("Volts", "0.4\u00a0V are lost.", "Ways out", "A larger section");
        final List<Node> before = seen();
        show(UNKNOWN);
        assertThat(words()).containsExactly("Volts", "Not known yet.");
        show(LOST);
        assertThat(seen()).containsExactlyElementsOf(before);
    }

    @Test
    void otherWordsOfTheSameLookTakeOverThePlace() {
        show(LOST);
        final List<Node> before = seen();
        show(
                List.of(
                        Line.subtitle("Volts"),
                        Line.notice(Verdict.CAUTION, "0.5 V are lost."),
                        Line.prose("Ways out")));
        assertThat(words()).containsExactly("Volts", "0.5\u00a0V are lost.", "Ways out");
        assertThat(seen()).containsExactlyElementsOf(before.subList(0, 3));
    }

    /** Its colour and its sign are those of its verdict. */
    @Test
    void anotherVerdictIsAnotherNotice() {
        show(List.of(Line.notice(Verdict.SOUND, "Right.")));
        final Node sound = seen().get(0);
        show(List.of(Line.notice(Verdict.UNSOUND, "Not right.")));
        assertThat(seen()).hasSize(1).doesNotContain(sound);
        assertThat(seen().get(0).getStyleClass()).contains(Verdict.UNSOUND.style());
    }

    @Test
    void withNothingToSayItTakesNoRoom() {
        show(LOST);
        show(List.of());
        assertThat(told.isVisible()).isFalse();
        goTo("beside");
        goTo("elsewhere");
        assertThat(told.isManaged()).isFalse();
        assertThat(told.getChildren()).noneMatch(Node::isManaged);
    }

    /** Whatever is said in turn, the places it needs do not grow for ever. */
    @Test
    void thePlacesDoNotGrowForEver() {
        final List<List<Line>> turns =
                List.of(UNKNOWN, LOST, List.of(Line.prose("A"), Line.subtitle("B")), List.of());
        for (int i = 0; i < 200; i++) {
            show(turns.get((i * 7 + i / 3) % turns.size()));
        }
        assertThat(told.getChildren()).hasSizeLessThan(12);
    }
}
