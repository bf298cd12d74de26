package wireworthy.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.rules.Direction;
import wireworthy.rules.ListRules;
import wireworthy.rules.Quantity;
import wireworthy.rules.RuleBook;
import wireworthy.rules.Slip;
import wireworthy.rules.SlipCatalogue;

class SlipTextsTest {
    private static final int MOST_WORDS = 45;
    private static final ResourceBundle SLIPS = ResourceBundle.getBundle("wireworthy.texts.slips");

    @Test
    void everySlipOfARuleIsInTheCatalogue() {
        assertThat(SlipCatalogue.ids()).containsAll(slipsOfRules());
    }

    @Test
    void onlyKnownSlipsHaveTexts() {
        final List<String> wanted = new ArrayList<>();
        SlipCatalogue.ids()
                .forEach(id -> wanted.addAll(List.of(id + ".say", id + ".do", id + ".short")));

        assertThat(SLIPS.keySet()).containsExactlyInAnyOrderElementsOf(wanted);
    }

    @ParameterizedTest
    @MethodSource("slips")
    void saysTheLearnersFigureFirst(final String id) {
        assertThat(SLIPS.getString(id + ".say")).startsWith("{figure}").endsWith(".");
        assertThat(SLIPS.getString(id + ".do")).matches("(?s)[A-Z0-9].*\\.");
    }

    @ParameterizedTest
    @MethodSource("slips")
    void isShort(final String id) {
        final String whole = SLIPS.getString(id + ".say") + " " + SLIPS.getString(id + ".do");

        assertThat(whole.split(" ")).hasSizeLessThanOrEqualTo(MOST_WORDS);
    }

    @ParameterizedTest
    @MethodSource("slips")
    void speaksOfTheStepAndNotOfThePerson(final String id) {
        final String whole = SLIPS.getString(id + ".say") + " " + SLIPS.getString(id + ".do");

        assertThat(whole.toLowerCase(Locale.ROOT).split("\\W+"))
                .doesNotContain("you", "your", "wrong", "mistake", "careless", "forgot", "sorry");
    }

    @ParameterizedTest
    @MethodSource("slips")
    void fitsIntoEitherOr(final String id) {
        assertThat(SLIPS.getString(id + ".short")).matches("[a-zπ][^.{}]*[^.{} ]");
    }

    static List<String> slips() {
        return SlipCatalogue.ids();
    }

    private static Set<String> slipsOfRules() {
        final Set<Quantity> everything = Set.of(Quantity.values());
        final List<Direction> joining = ListRules.joining(List.of(everything, everything));
        return Stream.concat(RuleBook.directions().stream(), joining.stream())
                .flatMap(direction -> direction.slips().stream())
                .map(Slip::id)
                .collect(Collectors.toSet());
    }

    @Test
    void everyDangerSetsTheFigureAgainstTheSoundOneInOneSentence() {
        final ResourceBundle dangers = ResourceBundle.getBundle("wireworthy.texts.dangers");

        assertThat(dangers.keySet())
                .allSatisfy(
                        key ->
                                assertThat(dangers.getString(key))
                                        .contains("{figure}", "{right}")
                                        .satisfies(text -> assertThat(sentences(text)).isOne()));
    }

    private static long sentences(final String text) {
        return IntStream.range(0, text.length()).filter(i -> text.charAt(i) == '.').count();
    }
}
