package wireworthy.paper.lesson;

import java.util.function.Function;
import wireworthy.lessons.Block.Broken;
import wireworthy.lessons.Block.CautionBox;
import wireworthy.lessons.Block.LiveFigure;
import wireworthy.lessons.Block.Prose;
import wireworthy.lessons.Block.WorkedExample;
import wireworthy.lessons.Figure;
import wireworthy.lessons.Lesson;
import wireworthy.paper.Block;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.texts.TextBundle;
import wireworthy.working.Line;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/**
 * A lesson to read away from the screen: its text, its examples worked, its figures in words. The
 * questions stay in the program, where their numbers are new each time.
 */
public final class LessonOnPaper {
    private static final TextBundle TEXTS = new TextBundle("lessons");

    private final Solver solver;
    private final Function<Figure, String> words;

    /**
     * @param words what a figure says where its lesson sets it
     */
    public LessonOnPaper(final Solver solver, final Function<Figure, String> words) {
        this.solver = solver;
        this.words = words;
    }

    /** The lesson as a PDF; the same lesson always gives the same bytes. */
    public byte[] pdf(final Lesson lesson, final PaperSize size) {
        final String title = lesson.heading().title();
        final Pages pages = new Pages(title, size, TEXTS.of("print.foot"));
        pages.body().say("h1", title);
        lesson.screens().stream()
                .flatMap(screen -> screen.blocks().stream())
                .forEach(block -> into(pages.body(), block));
        return pages.pdf();
    }

    private void into(final Block page, final wireworthy.lessons.Block block) {
        if (block instanceof Prose prose) {
            MarkdownOnPaper.into(page, prose.markdown());
        } else if (block instanceof WorkedExample example) {
            final Block note = page.add("div", "note");
            Telling.lines(solver.work(example.question())).forEach(line -> line(note, line));
        } else if (block instanceof LiveFigure live) {
            final Block note = page.add("div", "note");
            note.say("p", words.apply(live.figure()));
            note.say("p", TEXTS.of("print.try", "try", live.figure().tryThis()));
        } else if (block instanceof CautionBox caution) {
            final Block box = page.add("div", "warning");
            box.say("h3", TEXTS.of("take-care"));
            MarkdownOnPaper.into(box, caution.markdown());
        } else if (block instanceof Broken broken) {
            page.say("p", TEXTS.of("broken", "problem", broken.problem().text()));
        }
    }

    private static void line(final Block page, final Line line) {
        page.say("p", "small", line.formula());
        page.add("p").say("strong", line.numbers());
    }
}
