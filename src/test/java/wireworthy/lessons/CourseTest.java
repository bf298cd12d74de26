package wireworthy.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.working.Solver;

/** The lessons as one course: their order, how they build on each other, and their sources. */
class CourseTest {
    private static final List<String> COURSE =
            List.of(
                    "before-you-touch",
                    "rating-plate",
                    "power",
                    "circuits",
                    "parallel-loads",
                    "fuse-place",
                    "fuse-margin",
                    "cable",
                    "ampacity",
                    "floor-and-ceiling",
                    "copper-resistance",
                    "voltage-drop",
                    "four-ways",
                    "system-voltage",
                    "big-loads",
                    "fuse-or-cable",
                    "energy",
                    "charging",
                    "one-circuit");

    private static final Lessons LESSONS = Lessons.read(new Solver(), Optional.empty());

    static Stream<Lesson> course() {
        return COURSE.stream().map(id -> LESSONS.lesson(id).orElseThrow());
    }

    @Test
    void theLessonsStandInTheOrderOfTheCourse() {
        assertThat(LESSONS.contents()).extracting(LessonHeading::id).containsSubsequence(COURSE);
    }

    @ParameterizedTest
    @MethodSource("course")
    void whatALessonBuildsOnIsLinkedInItsText(final Lesson lesson) {
        assertThat(links(lesson))
                .containsAll(
                        lesson.heading().buildsOn().stream().map(id -> "lesson:" + id).toList());
    }

    @ParameterizedTest
    @MethodSource("course")
    void aLessonLeadsOnToTheNext(final Lesson lesson) {
        final int next = COURSE.indexOf(lesson.heading().id()) + 1;
        if (next < COURSE.size()) {
            assertThat(links(lesson)).contains("lesson:" + COURSE.get(next));
        }
    }

    @ParameterizedTest
    @MethodSource("course")
    void someWordOfTheTradeIsExplainedInPlace(final Lesson lesson) {
        assertThat(links(lesson)).anyMatch(Glossary::leadsTo);
    }

    @Test
    void everyWordOfTheGlossaryIsUsed() {
        assertThat(course().flatMap(lesson -> links(lesson).stream()))
                .containsAll(Glossary.ids().stream().map(id -> Glossary.LINK + id).toList());
    }

    @ParameterizedTest
    @MethodSource("course")
    void aLessonSaysWhatToLeaveAlone(final Lesson lesson) {
        assertThat(pieces(lesson))
                .extracting(Piece::text)
                .anyMatch(text -> text.matches("(?is).*\\b(alone|licensed|qualified)\\b.*"));
    }

    @ParameterizedTest
    @MethodSource("course")
    void everyRuleLimitAndNumberNamesItsSourceOrStandsBesideIt(final Lesson lesson) {
        assertThat(lesson.screens())
                .flatExtracting(screen -> withoutSource(pieces(screen)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "The fuse carries 10 A at most.                             | true",
                "Three cores keep 0.70 of it.                               | true",
                "floor = 1.25 × circuit current                             | true",
                "The lamps draw 4 A on 12 V.                                | false",
                "The cable can carry 17.4 A: is a 15 A fuse right?          | false",
                "At most a few lamps are on.                                | false"
            })
    void aRuleIsAFormulaOrAFigureThatBinds(final String text, final boolean rule) {
        assertThat(new Piece(text, false, Set.of()).rule()).isEqualTo(rule);
    }

    @Test
    void aTableOfFiguresIsARuleToo() {
        assertThat(new Piece("1, 2, 3, 4, 5 A", true, Set.of()).rule()).isTrue();
        assertThat(new Piece("gas pipes", true, Set.of()).rule()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "Blade fuses break 1000 A (ISO 8820-3).,          true",
        "It is common practice; no source.,               true",
        "So says IEC 60364-4-41; from memory unconfirmed., true",
        "Everybody knows that 15 A is the limit.,         false"
    })
    void aSourceIsAPublishedTextOrAWordThatThereIsNone(final String text, final boolean source) {
        assertThat(new Piece(text, false, Set.of()).source()).isEqualTo(source);
        assertThat(new Piece(text, false, Set.of("table:thin-wall")).source()).isTrue();
    }

    private static List<String> withoutSource(final List<Piece> pieces) {
        return IntStream.range(0, pieces.size())
                .filter(at -> pieces.get(at).rule())
                .filter(at -> beside(pieces, at).noneMatch(Piece::source))
                .mapToObj(at -> pieces.get(at).text())
                .toList();
    }

    private static Stream<Piece> beside(final List<Piece> pieces, final int at) {
        return pieces.subList(Math.max(0, at - 1), Math.min(pieces.size(), at + 2)).stream();
    }

    private static List<String> links(final Lesson lesson) {
        return pieces(lesson).stream().flatMap(piece -> piece.links().stream()).toList();
    }

    private static List<Piece> pieces(final Lesson lesson) {
        return lesson.screens().stream().flatMap(screen -> pieces(screen).stream()).toList();
    }

    private static List<Piece> pieces(final Lesson.Screen screen) {
        final Pieces pieces = new Pieces();
        LessonProof.texts(screen).forEach(text -> text.accept(pieces));
        return pieces.found;
    }

    /** A paragraph, an item of a list or a table. */
    private record Piece(String text, boolean table, Set<String> links) {
        private static final Pattern FIGURE = Pattern.compile("\\d");
        private static final Pattern FORMULA = Pattern.compile("=.*[×÷]|[≤≥]");
        private static final Pattern BINDS =
                Pattern.compile(
                        "(?i)\\b(at most|at least|no more than|up to|limits?|law|bears?"
                                + "|carr(y|ies)|keeps?|made for|is for|counts as|margin|ratings?)\\b");
        private static final Pattern SOURCE =
                Pattern.compile(
                        "(?i)source\\b|unconfirmed|\\b(ISO|IEC|BS|EN|SAE) \\d|CFR|ASTM|OpenStax");

        boolean rule() {
            return table ? FIGURE.matcher(text).find() : sentences().anyMatch(Piece::binds);
        }

        private Stream<String> sentences() {
            return new ReadingEase(text).sentences().stream().filter(each -> !each.endsWith("?"));
        }

        private static boolean binds(final String sentence) {
            return FORMULA.matcher(sentence).find()
                    || (FIGURE.matcher(sentence).find() && BINDS.matcher(sentence).find());
        }

        boolean source() {
            return SOURCE.matcher(text).find()
                    || links.stream().anyMatch(link -> link.startsWith("table:"));
        }
    }

    private static final class Pieces extends AbstractVisitor {
        private final List<Piece> found = new ArrayList<>();

        @Override
        public void visit(final Paragraph paragraph) {
            add(paragraph);
        }

        @Override
        public void visit(final CustomBlock block) {
            if (block instanceof TableBlock) {
                add(block);
            }
        }

        private void add(final Node node) {
            final Set<String> links = new LinkedHashSet<>();
            node.accept(
                    new AbstractVisitor() {
                        @Override
                        public void visit(final Link link) {
                            links.add(link.getDestination());
                        }
                    });
            found.add(new Piece(PlainText.of(node), node instanceof TableBlock, links));
        }
    }
}
