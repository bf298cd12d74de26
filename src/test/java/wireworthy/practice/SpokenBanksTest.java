package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.texts.Language;
import wireworthy.working.Solver;

/** Problems in another language: other words, the same numbers, the same places, the same right. */
class SpokenBanksTest {
    private static final Banks ENGLISH = Banks.read(List.of());
    private static final Banks GERMAN = inGerman();
    private static final Draw DRAW = new Draw(new Solver());
    private static final int MOST_WORDS = 45;

    private static Banks inGerman() {
        Language.use(Language.of("de"));
        try {
            return Banks.read(List.of());
        } finally {
            Language.use(Language.ENGLISH);
        }
    }

    @AfterAll
    static void english() {
        Language.use(Language.ENGLISH);
    }

    static Stream<Template> spoken() {
        return GERMAN.templates().stream().filter(template -> !template.foreign());
    }

    @Test
    void whatHasNoTextsOfItsOwnIsThereInEnglish() {
        assertThat(spoken()).isNotEmpty();
        assertThat(GERMAN.problems()).isEmpty();
        assertThat(ENGLISH.templates()).noneMatch(Template::foreign);
        assertThat(GERMAN.templates()).hasSameSizeAs(ENGLISH.templates());
    }

    @Test
    void everyTopicHasItsName() {
        assertThat(GERMAN.banks())
                .extracting(Bank::title)
                .doesNotContainAnyElementsOf(ENGLISH.banks().stream().map(Bank::title).toList());
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void everyTextIsItsOwnWithTheSamePlaces(final Template german) {
        final Template english = english(german);

        final List<String> texts = texts(german);
        final List<String> before = texts(english);
        assertThat(texts).hasSameSizeAs(before);
        for (int i = 0; i < texts.size(); i++) {
            assertThat(places(texts.get(i))).isEqualTo(places(before.get(i)));
            assertThat(texts.get(i).matches(".*[a-z]{3}.*") && texts.get(i).equals(before.get(i)))
                    .as("\"%s\" is still English", texts.get(i))
                    .isEqualTo(texts.get(i).matches("\\{=?[a-z.-]+}"));
            assertThat(texts.get(i).split(" ")).hasSizeLessThanOrEqualTo(MOST_WORDS);
        }
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void theSameSeedDrawsTheSameNumbers(final Template german) {
        for (long seed = 0; seed < 5; seed++) {
            if (german.asksFigures()) {
                assertThat(DRAW.problem(german, seed).question().figures())
                        .isEqualTo(DRAW.problem(english(german), seed).question().figures());
            } else {
                assertThat(DRAW.exercise(german, seed)).isNotNull();
            }
        }
    }

    private static Template english(final Template other) {
        return ENGLISH.template(other.bank(), other.id()).orElseThrow();
    }

    private static List<String> texts(final Template template) {
        return Stream.concat(Stream.of(template.text()), template.task().texts().stream()).toList();
    }

    private static Set<String> places(final String text) {
        final Set<String> places = new TreeSet<>(Drawn.given(text));
        places.addAll(Drawn.workedNames(text));
        return places;
    }
}
