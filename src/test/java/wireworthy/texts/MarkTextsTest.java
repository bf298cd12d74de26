package wireworthy.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said of a figure that no slip gives. */
class MarkTextsTest {
    private static final ResourceBundle MARKS = ResourceBundle.getBundle("wireworthy.texts.marks");
    private static final int MOST_WORDS = 32;

    static List<String> checks() {
        return MARKS.keySet().stream().filter(key -> key.startsWith("check.")).sorted().toList();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void theLearnersFigureComesFirst(final String key) {
        assertThat(MARKS.getString(key)).startsWith("{figure} ").endsWith(".");
    }

    /** So that a question of a dozen words still fits behind it. */
    @ParameterizedTest
    @MethodSource("checks")
    void isShort(final String key) {
        assertThat(MARKS.getString(key).split(" ")).hasSizeLessThanOrEqualTo(MOST_WORDS);
    }

    @ParameterizedTest
    @MethodSource("checks")
    void speaksOfTheFigureAndNotOfThePerson(final String key) {
        assertThat(MARKS.getString(key).toLowerCase(Locale.ROOT).split("\\W+"))
                .doesNotContain("you", "your", "wrong", "mistake", "careless", "forgot", "sorry");
    }
}
