package wireworthy.lessons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Document;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import wireworthy.working.Solver;

/** Reads one lesson: screens of blocks; what is broken is named and the rest read. */
final class LessonReader {
    /** The most words a screen may have. */
    static final int MOST_WORDS = 250;

    private static final int MOST_SCREENS = 12;
    private static final int MOST_OPEN = 20;
    private static final String NOT_REVIEWED = "No qualified person has reviewed this lesson yet.";
    private static final Parser MARKDOWN =
            Parser.builder()
                    .extensions(List.of(TablesExtension.create()))
                    .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                    .maxOpenBlockParsers(MOST_OPEN)
                    .maxInlineNesting(MOST_OPEN)
                    .build();

    /** Three dashes right under a paragraph would make it a heading; three stars never do. */
    private static final Pattern DASHES = Pattern.compile("(?m)^---[ \t]*$");

    private final LessonHeading heading;
    private final LessonText text;
    private final TextRules rules;
    private final FenceReader fences;
    private final List<LessonProblem> problems = new ArrayList<>();
    private final List<Lesson.Screen> screens = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();

    private int fenceLine;

    private LessonReader(
            final LessonHeading heading,
            final LessonText text,
            final Predicate<String> lessonKnown,
            final Solver solver) {
        this.heading = heading;
        this.text = text;
        this.rules = new TextRules(lessonKnown);
        this.fences = new FenceReader(solver, this::caution);
    }

    /**
     * Reads a lesson.
     *
     * @param heading its front matter, read
     * @param headingProblems what was wrong with that
     * @param lessonKnown tells whether a lesson of this id exists
     * @param solver works the worked examples, and keeps their plans
     */
    static Lesson read(
            final LessonHeading heading,
            final List<LessonProblem> headingProblems,
            final LessonText text,
            final Predicate<String> lessonKnown,
            final Solver solver) {
        final LessonReader reader = new LessonReader(heading, text, lessonKnown, solver);
        reader.body();
        reader.screens.forEach(reader::length);
        reader.references(lessonKnown);
        final List<LessonProblem> all =
                Stream.concat(headingProblems.stream(), reader.problems.stream())
                        .sorted(Comparator.comparingInt(LessonProblem::line))
                        .toList();
        return new Lesson(heading, reader.screens, all);
    }

    /** The first screen alone, for a window that opens: no other screen is read for it. */
    static Lesson opening(
            final LessonHeading heading,
            final List<LessonProblem> headingProblems,
            final LessonText text,
            final Predicate<String> lessonKnown,
            final Solver solver) {
        final LessonReader reader =
                new LessonReader(heading, text.toFirstBreak(), lessonKnown, solver);
        reader.firstScreen();
        return new Lesson(
                heading,
                reader.screens,
                Stream.concat(headingProblems.stream(), reader.problems.stream()).toList());
    }

    private void firstScreen() {
        Node node = document().getFirstChild();
        while (node != null && !(node instanceof ThematicBreak)) {
            final Node next = node.getNext();
            block(node, lineOf(node));
            node = next;
        }
        if (node == null) {
            lastScreen();
        }
        endScreen(text.linesBefore() + 1);
    }

    private void lastScreen() {
        if (!heading.reviewed()) {
            blocks.add(new Block.Prose(1, notReviewed()));
        }
    }

    private Node document() {
        return MARKDOWN.parse(DASHES.matcher(text.body()).replaceAll("***"));
    }

    private int lineOf(final Node node) {
        return TextRules.lineOf(node, text.linesBefore(), text.linesBefore() + 1);
    }

    private void body() {
        Node node = document().getFirstChild();
        while (node != null) {
            final Node next = node.getNext();
            final int line = lineOf(node);
            if (node instanceof ThematicBreak) {
                endScreen(line);
            } else {
                block(node, line);
            }
            node = next;
        }
        lastScreen();
        endScreen(text.linesBefore() + 1);
    }

    private void endScreen(final int line) {
        if (blocks.isEmpty()) {
            return;
        }
        if (screens.size() == MOST_SCREENS) {
            problems.add(problem(line, "The lesson has more than 12 screens", "Part it in two."));
        }
        if (screens.size() < MOST_SCREENS) {
            screens.add(new Lesson.Screen(blocks.get(0).line(), blocks));
        }
        blocks.clear();
    }

    private void block(final Node node, final int line) {
        try {
            if (node instanceof FencedCodeBlock fence) {
                fenceLine = line;
                blocks.add(fences.read(fence, line));
            } else {
                rules.check(node, text.linesBefore());
                prose(node, line);
            }
        } catch (final Refused e) {
            final LessonProblem problem = e.in(text.file());
            problems.add(problem);
            blocks.add(new Block.Broken(line, problem));
        }
    }

    /** Text that follows text joins it. */
    private void prose(final Node node, final int line) {
        final Block last = blocks.isEmpty() ? null : blocks.get(blocks.size() - 1);
        if (last instanceof Block.Prose prose) {
            prose.markdown().appendChild(node);
            return;
        }
        final Document document = new Document();
        document.appendChild(node);
        blocks.add(new Block.Prose(line, document));
    }

    private Node caution(final String markdown) {
        final Node document = MARKDOWN.parse(markdown);
        rules.check(document, fenceLine);
        return document;
    }

    private static Node notReviewed() {
        final Node document = new Document();
        final Node paragraph = new Paragraph();
        final Node emphasis = new Emphasis("*");
        emphasis.appendChild(new Text(NOT_REVIEWED));
        paragraph.appendChild(emphasis);
        document.appendChild(paragraph);
        return document;
    }

    private void length(final Lesson.Screen screen) {
        final int words = screen.blocks().stream().mapToInt(LessonReader::words).sum();
        if (words > MOST_WORDS) {
            problems.add(
                    problem(
                            screen.line(),
                            "This screen has " + words + " words; at most 250 are read",
                            "Part it with a line of three dashes."));
        }
    }

    private static int words(final Block block) {
        if (block instanceof Block.Prose prose) {
            return PlainText.count(prose.markdown());
        }
        return block instanceof Block.CautionBox box ? PlainText.count(box.markdown()) : 0;
    }

    private void references(final Predicate<String> lessonKnown) {
        heading.buildsOn().stream()
                .filter(id -> !lessonKnown.test(id))
                .forEach(
                        id ->
                                problems.add(
                                        problem(
                                                1,
                                                "There is no lesson \"" + id + "\" to build on",
                                                "Name a lesson that exists.")));
    }

    private LessonProblem problem(final int line, final String message, final String remedy) {
        return new LessonProblem(text.file(), line, message, remedy);
    }
}
