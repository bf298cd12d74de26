package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.practice.Exercise;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/**
 * Exercises without end: the question on the left all the time, what there is to say on the right.
 */
public final class PracticePlace implements Place {
    /** The name under which the settings keep this place. */
    public static final String ID = "practice";

    static final String TITLE = "Practice";

    private final PracticeModel model;
    private final WayOn way;
    private final InUse inUse;
    private final VBox question = new VBox();
    private final VBox answering = new VBox();
    private final VBox beside = new VBox();
    private final HelpButton lines;
    private final HelpButton rule;
    private final VBox sumsLine = new VBox();
    private List<String> sums = List.of();
    private Optional<ExerciseView> view = Optional.empty();

    /**
     * The place.
     *
     * @param toLesson opens the lesson that belongs to an exercise
     * @param inUse the sums in use, said under a result
     */
    public PracticePlace(
            final PracticeModel model, final Consumer<Exercise> toLesson, final InUse inUse) {
        this.model = model;
        this.inUse = inUse;
        way = new WayOn(model, toLesson, this::focus);
        lines = new HelpButton(PracticeTexts.of("line-by-line"), help(FigureModel::lineByLine));
        rule = new HelpButton(PracticeTexts.of("show-rule"), help(FigureModel::showRule));
    }

    private Runnable help(final Consumer<FigureModel> help) {
        return () -> model.figure().ifPresent(help);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return TITLE;
    }

    @Override
    public Parent build(final Shell shell) {
        for (final VBox box : List.of(question, answering, beside)) {
            box.getStyleClass().add(Styles.TIGHT);
        }
        model.doing().subscribe(doing -> doing.ifPresentOrElse(this::show, this::none));
        return new Bench(
                new VBox(topics(), question, answerPart()),
                PracticeTexts.of("left"),
                new VBox(beside, sumsLine),
                PracticeTexts.of("right"));
    }

    @Override
    public void shown() {
        if (model.doing().get().isEmpty()) {
            model.resume();
        }
        showSums();
        // At once, so that no letter is lost; the click or key that led here moves the focus later.
        focus();
        Platform.runLater(this::focus);
    }

    private void focus() {
        view.ifPresent(ExerciseView::focus);
    }

    private VBox topics() {
        final VBox topics = new VBox(new TopicBox(model));
        final List<String> troubles = model.trainer().troubles();
        if (!troubles.isEmpty()) {
            topics.getChildren().add(new Troubles(troubles));
        }
        topics.getStyleClass().add(Styles.TIGHT);
        return topics;
    }

    private VBox answerPart() {
        final Label notKept = Texts.soft("");
        notKept.textProperty().bind(model.notKept());
        notKept.managedProperty().bind(model.notKept().isNotEmpty());
        final Node buttons =
                Buttons.row(Buttons.main(PracticeTexts.of("mark"), model::answer), lines, rule);
        final VBox part = new VBox(answering, notKept, buttons);
        part.getStyleClass().add(Styles.TIGHT);
        return part;
    }

    private void show(final ExerciseModel doing) {
        final ExerciseView now = ExerciseView.of(doing, way);
        sums = doing.exercise().circuit().map(SumsNamed::of).orElse(List.of());
        question.getChildren()
                .setAll(new QuestionHead(doing.exercise(), model.skillState(), model.why().get()));
        answering.getChildren().setAll(now.answering());
        beside.getChildren().setAll(now.beside());
        showSums();
        offer(doing.figure().isPresent());
        view = Optional.of(now);
    }

    /** Says what a result goes by, where table, limit or margin have a part in it. */
    private void showSums() {
        sumsLine.getChildren().clear();
        if (!sums.isEmpty()) {
            sumsLine.getChildren().setAll(new SumsLine(sums, inUse));
        }
    }

    private void offer(final boolean working) {
        lines.offer(working);
        rule.offer(working);
    }

    private void none() {
        offer(false);
        question.getChildren().setAll(new Notice(Verdict.CAUTION, PracticeTexts.of("no-bank")));
    }
}
