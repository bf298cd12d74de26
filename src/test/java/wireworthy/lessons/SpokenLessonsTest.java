package wireworthy.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.practice.Bank;
import wireworthy.practice.Banks;
import wireworthy.texts.Keys;
import wireworthy.texts.Language;
import wireworthy.texts.Phrases;
import wireworthy.working.Solver;

/** A lesson in another language shows, works and asks the same as the English one. */
class SpokenLessonsTest {
    private static final Solver SOLVER = new Solver();
    private static final Lessons ENGLISH = Lessons.read(SOLVER, Optional.empty());
    private static final Lessons GERMAN = inGerman(() -> Lessons.read(SOLVER, Optional.empty()));
    private static final Pattern SENTENCE = Pattern.compile("[.!?:]\\s");
    private static final int MOST_WORDS = 250;
    private static final int LONGEST_SENTENCE = 18;
    private static final int FIRST = 5;

    private static final Banks BANKS = inGerman(() -> Banks.read(List.of()));

    private static <T> T inGerman(final Supplier<T> read) {
        Language.use(Language.of("de"));
        try {
            return read.get();
        } finally {
            Language.use(Language.ENGLISH);
        }
    }

    static Stream<String> spoken() {
        return GERMAN.contents().stream().map(LessonHeading::id).filter(id -> !GERMAN.foreign(id));
    }

    @Test
    void theFirstFiveAreThereAndTheOthersInEnglish() {
        assertThat(spoken())
                .containsExactlyElementsOf(
                        ENGLISH.contents().stream().map(LessonHeading::id).limit(FIRST).toList());
        assertThat(GERMAN.contents()).hasSameSizeAs(ENGLISH.contents());
        assertThat(GERMAN.problems()).isEmpty();
    }

    @Test
    void thoseInEnglishHaveAtLeastATitle() {
        assertThat(GERMAN.contents())
                .extracting(LessonHeading::title)
                .doesNotContainAnyElementsOf(
                        ENGLISH.contents().stream().map(LessonHeading::title).toList());
    }

    @Test
    void noTitleIsLeftOver() {
        final Set<String> left = new TreeSet<>(Keys.of("de/titles"));
        Stream.concat(
                        ENGLISH.contents().stream()
                                .filter(each -> GERMAN.foreign(each.id()))
                                .map(LessonHeading::title),
                        Banks.read(List.of()).banks().stream().map(Bank::title))
                .forEach(title -> left.remove(Phrases.key(title)));

        assertThat(left).as("take out of texts/de/titles.properties").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void theHeadingSaysTheSame(final String id) {
        final LessonHeading german = lesson(GERMAN, id).heading();
        final LessonHeading english = lesson(ENGLISH, id).heading();

        assertThat(german.skills()).isEqualTo(english.skills());
        assertThat(german.buildsOn()).isEqualTo(english.buildsOn());
        assertThat(german.reviewed()).isEqualTo(english.reviewed());
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void everyBlockStandsInItsPlace(final String id) {
        final List<List<Class<?>>> german = kinds(lesson(GERMAN, id));

        assertThat(german).isEqualTo(kinds(lesson(ENGLISH, id)));
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void theSameIsWorkedAndAsked(final String id) {
        assertThat(blocks(lesson(GERMAN, id), Block.Questions.class))
                .isEqualTo(blocks(lesson(ENGLISH, id), Block.Questions.class));
        assertThat(figures(lesson(GERMAN, id))).isEqualTo(figures(lesson(ENGLISH, id)));
        assertThat(worked(lesson(GERMAN, id))).isEqualTo(worked(lesson(ENGLISH, id)));
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void whatItAsksIsInItsLanguage(final String id) {
        blocks(lesson(GERMAN, id), Block.Questions.class)
                .forEach(
                        asked ->
                                assertThat(asked.templates())
                                        .allSatisfy(
                                                each ->
                                                        assertThat(
                                                                        BANKS.template(
                                                                                asked.bank(), each))
                                                                .get()
                                                                .matches(it -> !it.foreign())));
    }

    /** The questions of a screen stand behind one button, so there is nothing for it to lead to. */
    @Test
    void noTextBeforeQuestionsEndsInAColon() {
        assertThat(Stream.of(ENGLISH, GERMAN))
                .flatExtracting(SpokenLessonsTest::leadingToQuestions)
                .hasSizeGreaterThan(2 * FIRST)
                .noneMatch(text -> text.endsWith(":"));
    }

    private static List<String> leadingToQuestions(final Lessons lessons) {
        return lessons.contents().stream()
                .flatMap(heading -> lesson(lessons, heading.id()).screens().stream())
                .flatMap(SpokenLessonsTest::leadingToQuestions)
                .toList();
    }

    private static Stream<String> leadingToQuestions(final Lesson.Screen screen) {
        final List<Block> blocks = screen.blocks();
        return IntStream.range(1, blocks.size())
                .filter(each -> blocks.get(each) instanceof Block.Questions)
                .mapToObj(each -> blocks.get(each - 1))
                .filter(Block.Prose.class::isInstance)
                .map(prose -> PlainText.of(((Block.Prose) prose).markdown()).strip());
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void isShortToReadAndLinksTheSame(final String id) {
        for (final Lesson.Screen screen : lesson(GERMAN, id).screens()) {
            assertThat(words(screen)).isLessThanOrEqualTo(MOST_WORDS);
        }
        final String text = text(lesson(GERMAN, id));
        final double sentence = (double) text.split("\\s+").length / SENTENCE.split(text).length;
        assertThat(sentence).isLessThan(LONGEST_SENTENCE);
        assertThat(links(text)).isEqualTo(links(text(lesson(ENGLISH, id))));
    }

    private static Lesson lesson(final Lessons all, final String id) {
        return all.lesson(id).orElseThrow();
    }

    private static List<List<Class<?>>> kinds(final Lesson lesson) {
        return lesson.screens().stream()
                .map(
                        screen ->
                                screen.blocks().stream()
                                        .<Class<?>>map(Object::getClass)
                                        .distinct()
                                        .toList())
                .toList();
    }

    private static <B extends Block> List<B> blocks(final Lesson lesson, final Class<B> kind) {
        return lesson.screens().stream()
                .flatMap(screen -> screen.blocks().stream())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static List<FigureKind> figures(final Lesson lesson) {
        return blocks(lesson, Block.LiveFigure.class).stream()
                .map(block -> block.figure().kind())
                .toList();
    }

    /** What the examples come to. */
    private static List<double[]> values(final Lesson lesson) {
        return blocks(lesson, Block.WorkedExample.class).stream()
                .map(block -> SOLVER.work(block.question()).values())
                .toList();
    }

    private static List<String> worked(final Lesson lesson) {
        return values(lesson).stream().map(java.util.Arrays::toString).toList();
    }

    private static String text(final Lesson lesson) {
        return String.join(
                " ",
                lesson.screens().stream()
                        .flatMap(screen -> screen.blocks().stream())
                        .map(SpokenLessonsTest::text)
                        .toList());
    }

    private static String text(final Block block) {
        if (block instanceof Block.CautionBox box) {
            return PlainText.of(box.markdown());
        }
        return block instanceof Block.Prose prose ? PlainText.of(prose.markdown()) : "";
    }

    private static int words(final Lesson.Screen screen) {
        return String.join(" ", screen.blocks().stream().map(SpokenLessonsTest::text).toList())
                .split("\\s+")
                .length;
    }

    private static List<String> links(final String text) {
        return Pattern.compile("lesson:[a-z-]+")
                .matcher(text)
                .results()
                .map(it -> it.group())
                .toList();
    }
}
