package wireworthy.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.texts.Keys;
import wireworthy.texts.Language;
import wireworthy.texts.Phrases;

/** What a sum says in words is said in every language. */
class FormulaPhrasesTest {
    static Stream<Language> others() {
        return Language.all().stream().filter(it -> !it.ofSources());
    }

    @ParameterizedTest
    @MethodSource("others")
    void everyPhraseIsThereOnce(final Language language) {
        final Map<String, String> wanted = new TreeMap<>();
        phrases().forEach(it -> wanted.put(Phrases.key(it), it));

        assertThat(Keys.of(language.code() + "/formulas"))
                .as("add to or take out of texts/%s/formulas.properties", language.code())
                .containsExactlyInAnyOrderElementsOf(wanted.keySet());
    }

    @Test
    void aSumIsSaidInTheLanguageInUse() {
        final Formula formula = Formula.of("next rating below {fuse-floor}, 1.5 at most");
        try {
            Language.use(Language.of("de"));

            assertThat(formula.fill(ref -> "12,5 A"))
                    .isEqualTo("nächster Nennstrom unter 12,5 A, 1,5 höchstens");
        } finally {
            Language.use(Language.ENGLISH);
        }
    }

    private static Stream<String> phrases() {
        final Set<Quantity> all = Set.of(Quantity.values());
        final List<Direction> joining = ListRules.joining(List.of(all, all));
        final List<Direction> ohms =
                ListRules.joining(
                        List.of(Set.of(Quantity.RESISTANCE, Quantity.START_MULTIPLE), all));
        return Stream.of(RuleBook.directions(), joining, ohms)
                .flatMap(List::stream)
                .flatMap(
                        direction ->
                                Stream.concat(
                                        Stream.of(direction.formula()),
                                        direction.slips().stream().map(Slip::formula)))
                .flatMap(formula -> formula.phrases().stream());
    }
}
