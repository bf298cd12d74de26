package wireworthy.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/** Checks what a lesson says to its reader: its length, its ease and the questions it asks. */
public final class LessonProof {
    /** The hardest running text allowed, as a year of school. */
    private static final double GRADE = 8;

    private static final double WORDS_PER_SENTENCE = 18;
    private static final int MOST_WORDS = 250;

    private final BiPredicate<String, String> asked;

    /**
     * A check of lessons.
     *
     * @param asked whether a bank of this id has a template of this id
     */
    public LessonProof(final BiPredicate<String, String> asked) {
        this.asked = asked;
    }

    /** What is wrong in a lesson, in the order of its lines. */
    public List<LessonProblem> of(final Lesson lesson, final String file) {
        final List<LessonProblem> found = new ArrayList<>(lesson.problems());
        for (final Lesson.Screen screen : lesson.screens()) {
            final int words = texts(screen).mapToInt(PlainText::count).sum();
            if (words > MOST_WORDS) {
                found.add(
                        new LessonProblem(
                                file,
                                screen.line(),
                                "%d words on one screen".formatted(words),
                                "Keep to %d; part it by ---.".formatted(MOST_WORDS)));
            }
            questions(screen, file, found);
        }
        ease(lesson, file, found);
        return found;
    }

    private void questions(
            final Lesson.Screen screen, final String file, final List<LessonProblem> found) {
        screen.blocks().stream()
                .filter(Block.Questions.class::isInstance)
                .map(Block.Questions.class::cast)
                .forEach(
                        block ->
                                block.templates().stream()
                                        .filter(id -> !asked.test(block.bank(), id))
                                        .map(id -> unknown(file, screen.line(), block.bank(), id))
                                        .forEach(found::add));
    }

    private static LessonProblem unknown(
            final String file, final int line, final String bank, final String id) {
        return new LessonProblem(
                file,
                line,
                "the bank %s has no template %s".formatted(bank, id),
                "Name one that stands in problem-banks/%s.json.".formatted(bank));
    }

    private static void ease(
            final Lesson lesson, final String file, final List<LessonProblem> found) {
        final ReadingEase ease = new ReadingEase(runningText(lesson));
        if (ease.grade() > GRADE || ease.wordsPerSentence() > WORDS_PER_SENTENCE) {
            found.add(
                    new LessonProblem(
                            file,
                            1,
                            "hard to read: school year %.1f, %.1f words a sentence"
                                    .formatted(ease.grade(), ease.wordsPerSentence()),
                            "Keep to year %.0f and %.0f words: shorter words and sentences."
                                    .formatted(GRADE, WORDS_PER_SENTENCE)));
        }
    }

    /** The running texts and cautions of a screen. */
    static Stream<Node> texts(final Lesson.Screen screen) {
        return screen.blocks().stream()
                .flatMap(
                        block -> {
                            if (block instanceof Block.Prose prose) {
                                return Stream.of(prose.markdown());
                            }
                            return block instanceof Block.CautionBox box
                                    ? Stream.of(box.markdown())
                                    : Stream.empty();
                        });
    }

    /** The paragraphs, those of lists and cautions too, without headings and tables. */
    static String runningText(final Lesson lesson) {
        final Paragraphs paragraphs = new Paragraphs();
        lesson.screens().stream()
                .flatMap(LessonProof::texts)
                .forEach(text -> text.accept(paragraphs));
        return paragraphs.texts.stream().collect(Collectors.joining("\n"));
    }

    private static final class Paragraphs extends AbstractVisitor {
        private final List<String> texts = new ArrayList<>();

        @Override
        public void visit(final Paragraph paragraph) {
            texts.add(PlainText.of(paragraph));
        }
    }
}
