package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import wireworthy.window.parts.Notice;
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

    @Override
    public void start(final Stage stage) {}

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
        told.show(UNKNOWN);
        told.show(LOST);
        assertThat(words())
                .containsExactly("Volts", "0.4\u00a0V are lost.", "Ways out", "A larger section");
        final List<Node> before = seen();
        told.show(UNKNOWN);
        assertThat(words()).containsExactly("Volts", "Not known yet.");
        told.show(LOST);
        assertThat(seen()).containsExactlyElementsOf(before);
    }

    @Test
    void otherWordsOfTheSameLookTakeOverThePlace() {
        told.show(LOST);
        final List<Node> before = seen();
        told.show(
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
        told.show(List.of(Line.notice(Verdict.SOUND, "Right.")));
        final Node sound = seen().get(0);
        told.show(List.of(Line.notice(Verdict.UNSOUND, "Not right.")));
        assertThat(seen()).hasSize(1).doesNotContain(sound);
        assertThat(seen().get(0).getStyleClass()).contains(Verdict.UNSOUND.style());
    }

    @Test
    void withNothingToSayItTakesNoRoom() {
        told.show(LOST);
        told.show(List.of());
        assertThat(told.isManaged()).isFalse();
        assertThat(told.getChildren()).noneMatch(Node::isManaged);
    }

    /** Whatever is said in turn, the places it needs do not grow for ever. */
    @Test
    void thePlacesDoNotGrowForEver() {
        final List<List<Line>> turns =
                List.of(UNKNOWN, LOST, List.of(Line.prose("A"), Line.subtitle("B")), List.of());
        for (int i = 0; i < 200; i++) {
            told.show(turns.get((i * 7 + i / 3) % turns.size()));
        }
        assertThat(told.getChildren()).hasSizeLessThan(12);
    }
}
