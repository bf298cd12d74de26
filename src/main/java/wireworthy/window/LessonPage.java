package wireworthy.window;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wireworthy.lessons.Block;
import wireworthy.lessons.Figure;
import wireworthy.lessons.Lesson;
import wireworthy.lessons.LessonProblem;
import wireworthy.window.figures.LiveFigures;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Markdown;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.window.parts.WorkingStrip;
import wireworthy.working.Solver;
import wireworthy.working.Worked;

/** A lesson: its title, and under it the screens added, one below the other. */
final class LessonPage extends VBox {
    private final Solver solver;
    private final LessonDesk desk;
    private final Consumer<String> follow;

    /**
     * @param foreign whether its text is not in the language in use
     * @param follow told where a link leads when it is used: {@code lesson:id} or {@code table:id}
     */
    LessonPage(
            final Lesson lesson,
            final boolean foreign,
            final Solver solver,
            final LessonDesk desk,
            final Consumer<String> follow) {
        this.solver = solver;
        this.desk = desk;
        this.follow = follow;
        getStyleClass().addAll(Styles.PAGE, Styles.LESSON);
        getChildren().add(Texts.title(lesson.heading().title()));
        if (foreign) {
            getChildren().add(Texts.soft(LessonTexts.of("foreign")));
        }
        ofTheWhole(lesson).forEach(problem -> getChildren().add(broken(problem)));
    }

    /** The screens there are, in order. */
    List<Node> screens() {
        return getChildren().stream()
                .filter(node -> node.getStyleClass().contains(Styles.LESSON_SCREEN))
                .toList();
    }

    /** Adds screens under those there are. */
    void add(final List<Lesson.Screen> screens) {
        screens.forEach(screen -> getChildren().add(screen(screen)));
    }

    /** Adds what stands under the last screen. */
    void add(final Node foot) {
        getChildren().add(foot);
    }

    /** What is wrong with the file but stands at none of its parts. */
    private static List<LessonProblem> ofTheWhole(final Lesson lesson) {
        final List<LessonProblem> inPlace =
                lesson.screens().stream()
                        .flatMap(screen -> screen.blocks().stream())
                        .filter(Block.Broken.class::isInstance)
                        .map(block -> ((Block.Broken) block).problem())
                        .toList();
        return lesson.problems().stream().filter(each -> !inPlace.contains(each)).toList();
    }

    private VBox screen(final Lesson.Screen screen) {
        final VBox box = new VBox();
        box.getStyleClass().add(Styles.LESSON_SCREEN);
        final List<Block.Questions> asked = asked(screen);
        for (final Block block : screen.blocks()) {
            box.getChildren().addAll(nodes(block));
            if (!asked.isEmpty() && block.equals(asked.get(asked.size() - 1))) {
                box.getChildren().addAll(practising(asked));
            }
        }
        return box;
    }

    private static List<Block.Questions> asked(final Lesson.Screen screen) {
        return screen.blocks().stream()
                .filter(Block.Questions.class::isInstance)
                .map(Block.Questions.class::cast)
                .toList();
    }

    /** One way into practice for all questions of a screen, under the last of them. */
    private List<Node> practising(final List<Block.Questions> asked) {
        final int count = asked.stream().mapToInt(each -> each.templates().size()).sum();
        final String practise = LessonTexts.of(count == 1 ? "practise.one" : "practise");
        return List.of(
                Texts.paragraph(count(count)), Buttons.main(practise, () -> desk.practise(asked)));
    }

    private List<Node> nodes(final Block block) {
        if (block instanceof Block.Prose prose) {
            return Markdown.of(prose.markdown(), follow);
        }
        if (block instanceof Block.LiveFigure live) {
            return figure(live.figure().by(desk.inUse().sums()));
        }
        if (block instanceof Block.WorkedExample example) {
            return working(solver.work(example.question()));
        }
        if (block instanceof Block.CautionBox box) {
            return List.of(caution(box));
        }
        if (block instanceof Block.Questions) {
            return List.of();
        }
        return List.of(broken(((Block.Broken) block).problem()));
    }

    private List<Node> figure(final Figure figure) {
        return withSums(LiveFigures.of(figure, solver), SumsNamed.of(figure));
    }

    private List<Node> working(final Worked worked) {
        return withSums(new WorkingStrip(worked), SumsNamed.of(worked));
    }

    /** Says what a result goes by, where table, limit or margin have a part in it. */
    private List<Node> withSums(final Node result, final List<String> own) {
        return own.isEmpty() ? List.of(result) : List.of(result, new SumsLine(own, desk.inUse()));
    }

    private Node caution(final Block.CautionBox box) {
        final VBox words = new VBox(Texts.subtitle(LessonTexts.of("take-care")));
        words.getChildren().addAll(Markdown.of(box.markdown(), follow));
        return new Notice(Verdict.CAUTION, words);
    }

    private static String count(final int questions) {
        return LessonTexts.of(questions == 1 ? "questions.one" : "questions", "count", questions);
    }

    private static Node broken(final LessonProblem problem) {
        return new Notice(Verdict.CAUTION, LessonTexts.of("broken", "problem", problem.text()));
    }
}
