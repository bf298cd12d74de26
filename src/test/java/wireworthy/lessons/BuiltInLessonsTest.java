package wireworthy.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.practice.Banks;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/** The lessons that come with the program. */
class BuiltInLessonsTest {
    private static final Solver SOLVER = new Solver();
    private static final Lessons LESSONS = Lessons.read(SOLVER, Optional.empty());
    private static final Banks BANKS = Banks.read(List.of());
    private static final double WORDS_A_MINUTE = 130;

    static Stream<Lesson> lessons() {
        return LESSONS.contents().stream()
                .map(heading -> LESSONS.lesson(heading.id()).orElseThrow());
    }

    private static <B extends Block> List<B> blocks(final Lesson lesson, final Class<B> kind) {
        return lesson.screens().stream()
                .flatMap(screen -> screen.blocks().stream())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static List<Node> texts(final Lesson.Screen screen) {
        return LessonProof.texts(screen).toList();
    }

    private static String text(final Lesson.Screen screen) {
        return texts(screen).stream().map(PlainText::of).collect(Collectors.joining("\n"));
    }

    private static String text(final Lesson lesson) {
        return lesson.screens().stream()
                .map(BuiltInLessonsTest::text)
                .collect(Collectors.joining("\n"));
    }

    private static List<String> templates(final Lesson lesson) {
        return blocks(lesson, Block.Questions.class).stream()
                .flatMap(block -> block.templates().stream())
                .toList();
    }

    private static int words(final String text) {
        return text.split("\\s+").length;
    }

    @Test
    void allReadWithoutProblems() {
        assertThat(LESSONS.problems()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void buildsOnlyOnLessonsThatComeBefore(final Lesson lesson) {
        final List<String> before =
                LESSONS.contents().stream()
                        .map(LessonHeading::id)
                        .takeWhile(id -> !id.equals(lesson.heading().id()))
                        .toList();
        assertThat(before).containsAll(lesson.heading().buildsOn());
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void hasTwoToFiveScreensOfAtMost250Words(final Lesson lesson) {
        assertThat(lesson.screens()).hasSizeBetween(2, 5);
        assertThat(lesson.screens())
                .allSatisfy(screen -> assertThat(words(text(screen))).isLessThanOrEqualTo(250));
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void isReadInUnderTenMinutesWithOneForTheFigureAndOneForEachQuestion(final Lesson lesson) {
        final int doing = blocks(lesson, Block.LiveFigure.class).size() + templates(lesson).size();
        assertThat(words(text(lesson)) / WORDS_A_MINUTE + doing).isLessThan(10);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void isReadableInSchoolYearEight(final Lesson lesson) {
        final ReadingEase ease = new ReadingEase(LessonProof.runningText(lesson));
        assertThat(ease.wordsPerSentence()).isLessThanOrEqualTo(18);
        assertThat(ease.grade()).isLessThanOrEqualTo(8);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void opensWithAQuestionToPredict(final Lesson lesson) {
        Node first = texts(lesson.screens().get(0)).get(0).getFirstChild();
        while (first instanceof Heading) {
            first = first.getNext();
        }
        assertThat(first).isInstanceOf(Paragraph.class);
        assertThat(new ReadingEase(PlainText.of(first)).sentences().get(0)).endsWith("?");
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void holdsFiguresAWorkedExampleACautionAndThreeToFiveQuestions(final Lesson lesson) {
        assertThat(blocks(lesson, Block.LiveFigure.class)).hasSizeBetween(1, 2);
        assertThat(blocks(lesson, Block.WorkedExample.class)).isNotEmpty();
        assertThat(blocks(lesson, Block.CautionBox.class)).isNotEmpty();
        assertThat(templates(lesson)).hasSizeBetween(3, 5).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void asksQuestionsThatTheBanksHave(final Lesson lesson) {
        for (final Block.Questions block : blocks(lesson, Block.Questions.class)) {
            assertThat(block.templates())
                    .allMatch(id -> BANKS.template(block.bank(), id).isPresent());
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void saysThatNoQualifiedPersonHasReviewedIt(final Lesson lesson) {
        assertThat(lesson.heading().reviewed()).isFalse();
        assertThat(text(lesson)).endsWith("No qualified person has reviewed this lesson yet.");
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void tellsToIsolateFirst(final Lesson lesson) {
        assertThat(blocks(lesson, Block.CautionBox.class))
                .anySatisfy(box -> assertThat(PlainText.of(box.markdown())).contains("Isolate"));
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void namesASource(final Lesson lesson) {
        assertThat(text(lesson)).containsAnyOf("source:", "Source:", "no source");
    }

    @ParameterizedTest
    @CsvSource({
        "before-you-touch,  short-circuit-current, 2520",
        "rating-plate,      load-power,            156",
        "power,             load-current,          4.5",
        "circuits,          loop-length,           13",
        "parallel-loads,    circuit-current,       8.5",
        "fuse-place,        short-circuit-current, 152.174",
        "fuse-margin,       fuse,                  10",
        "cable,             section,               2.454e-6",
        "ampacity,          ampacity,              15.563",
        "floor-and-ceiling, fuse,                  15",
        "voltage-drop,      drop,                  0.8027",
        "copper-resistance, loop-resistance,       0.16053",
        "four-ways,         section-for-drop,      8.3611e-7",
        "system-voltage,    bank-energy,           17.28e6",
        "big-loads,         supply-current,        58.8235",
        "fuse-or-cable,     fuse-time-longest,     0.1",
        "charging,          charge-time,           11250",
        "one-circuit,       standard-section,      4e-6"
    })
    void theWorkedExampleGivesWhatTheTextSays(
            final String id, final String asked, final double value) {
        final Lesson lesson = LESSONS.lesson(id).orElseThrow();
        final var worked = SOLVER.work(blocks(lesson, Block.WorkedExample.class).get(0).question());
        assertThat(worked.value(Quantity.of(asked).orElseThrow()))
                .hasValueCloseTo(value, withinPercentage(0.02));
        assertThat(Telling.lines(worked)).isNotEmpty();
    }

    @Test
    void theFuseFigureStartsWhereTheTextStandsAndMovesAsWritten() {
        final Figure figure =
                blocks(LESSONS.lesson("floor-and-ceiling").orElseThrow(), Block.LiveFigure.class)
                        .get(0)
                        .figure();
        assertThat(figure.kind()).isEqualTo(FigureKind.FUSE_BETWEEN);
        assertThat(figure.handle(FigureOption.CIRCUIT_CURRENT))
                .isEqualTo(new Handle.Range(Quantity.CIRCUIT_CURRENT, 1, 30, 0.1, 9.3));
        assertThat(figure.handle(FigureOption.TWO_CORE_CABLES))
                .isEqualTo(new Handle.Range(Quantity.BUNDLED, 1, 6, 1, 2));
        assertThat(figure.handle(FigureOption.MARGIN))
                .isEqualTo(new Handle.Fixed(Quantity.MARGIN, 1.25));
        assertThat(figure.handle(FigureOption.CABLE_TABLE))
                .isEqualTo(new Handle.Named(Quantity.CABLE_TABLE, "thin-wall"));
        assertThat(figure.handle(FigureOption.SECTION))
                .isInstanceOfSatisfying(
                        Handle.Choice.class,
                        choice ->
                                assertThat(choice.start() / Dimension.AREA.scale())
                                        .isCloseTo(2.5, within(1e-9)));
    }

    @Test
    void theFeedHasItsLoadsToSwitch() {
        final Figure figure =
                blocks(LESSONS.lesson("parallel-loads").orElseThrow(), Block.LiveFigure.class)
                        .get(0)
                        .figure();
        assertThat(figure.handle(FigureOption.LOADS))
                .isEqualTo(
                        new Handle.Switches(
                                List.of(
                                        new Handle.Load("house lamps", 9, 6, true),
                                        new Handle.Load("aisle strips", 30, 1, true),
                                        new Handle.Load("ticket-desk till", 18, 1, false),
                                        new Handle.Load("popcorn-cart fan", 21.6, 1, false))));
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void eachFigureAsksSomethingToTry(final Lesson lesson) {
        assertThat(blocks(lesson, Block.LiveFigure.class))
                .extracting(Block.LiveFigure::figure)
                .allSatisfy(
                        figure -> {
                            assertThat(figure.tryThis()).contains("?");
                            assertThat(figure.handles().keySet())
                                    .containsExactlyElementsOf(figure.kind().options());
                        });
    }
}
