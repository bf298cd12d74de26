package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import wireworthy.practice.Exercise;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.window.stand.StandTexts;

/**
 * Exercises without end: the question on the left all the time, what there is to say on the right.
 */
public final class PracticePlace implements Place {
    /** The name under which the settings keep this place. */
    public static final String ID = "practice";

    private static final Executor LATER =
            CompletableFuture.delayedExecutor(300, TimeUnit.MILLISECONDS);

    private final PracticeModel model;
    private final Consumer<Exercise> toLesson;
    private final InUse inUse;
    private final VBox left = new VBox();
    private final VBox question = new VBox();
    private final VBox answering = new VBox();
    private final VBox beside = new VBox();
    private final HelpButton lines;
    private final HelpButton rule;
    private final VBox sumsLine = new VBox();
    private final VBox notices = new VBox();
    private final Hyperlink who = new Hyperlink();
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
        this.toLesson = toLesson;
        lines = new HelpButton(PracticeTexts.of("line-by-line"), help(FigureModel::lineByLine));
        rule = new HelpButton(PracticeTexts.of("show-rule"), help(FigureModel::showRule));
    }

    /** What has no numbers would be the same once more. */
    private WayOn way(final Exercise exercise) {
        return new WayOn(
                model::next,
                exercise.template().hasNumbers() ? Optional.of(model::twin) : Optional.empty(),
                () -> toLesson.accept(exercise),
                this::focus);
    }

    private void passBy() {
        model.passBy();
        focus();
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
        return PracticeTexts.of("title");
    }

    @Override
    public Parent build(final Shell shell) {
        for (final VBox box : List.of(question, answering, beside, notices)) {
            box.getStyleClass().add(Styles.TIGHT);
        }
        model.doing().subscribe(doing -> doing.ifPresentOrElse(this::show, this::none));
        left.getChildren().setAll(notices, topics(shell), question, answerPart());
        final Bench bench =
                new Bench(
                        left,
                        PracticeTexts.of("left"),
                        new VBox(beside, sumsLine),
                        PracticeTexts.of("right"));
        bench.sceneProperty()
                .subscribe(
                        (before, now) -> {
                            Optional.ofNullable(before)
                                    .ifPresent(it -> it.getAccelerators().remove(Keys.OTHER));
                            Optional.ofNullable(now)
                                    .ifPresent(
                                            it -> it.getAccelerators().put(Keys.OTHER, this::key));
                        });
        return bench;
    }

    /** Works wherever the keyboard is, also where what had it is gone. */
    private void key() {
        if (!left.isDisabled()) {
            passBy();
        }
    }

    @Override
    public void shown() {
        final CompletableFuture<Void> reading = model.trainer().reading();
        if (RecordReading.isSoon(reading)) {
            begin();
        } else {
            left.setDisable(true);
            question.getChildren().clear();
            LATER.execute(() -> Platform.runLater(() -> saidToBeRead(reading)));
            final CompletableFuture<Void> unused =
                    reading.whenComplete((done, failure) -> Platform.runLater(this::beginAtLast));
        }
    }

    /** What takes but a moment is not spoken of, so that nothing flashes. */
    private void saidToBeRead(final CompletableFuture<Void> reading) {
        if (!reading.isDone()) {
            beside.getChildren().setAll(Texts.paragraph(RecordReading.words(model.trainer())));
        }
    }

    private void beginAtLast() {
        left.setDisable(false);
        beside.getChildren().clear();
        begin();
        if (model.doing().get().isEmpty()) {
            none();
        }
    }

    private void begin() {
        model.begin();
        showSums();
        showLearner();
        // At once, so that no letter is lost; the click or key that led here moves the focus later.
        focus();
        Platform.runLater(this::focus);
    }

    private void focus() {
        view.ifPresent(ExerciseView::focus);
    }

    /** Whose answers these are, and what is wrong with the record or the clock. */
    private void showLearner() {
        who.setText(PracticeTexts.of("who", "person", model.trainer().person()));
        notices.getChildren().clear();
        for (final String notice : model.trainer().notices()) {
            notices.getChildren().add(new Notice(Verdict.CAUTION, notice));
        }
        notices.setManaged(!notices.getChildren().isEmpty());
    }

    private VBox topics(final Shell shell) {
        final Hyperlink stand = new Hyperlink(StandTexts.of("title"));
        stand.setOnAction(event -> shell.go(StandPlace.ID));
        who.setOnAction(event -> shell.go(PeoplePlace.ID));
        final FlowPane ways = new FlowPane(stand, who);
        ways.getStyleClass().add(Styles.WAYS);
        final VBox topics = new VBox(ways, new TopicBox(model));
        final List<String> troubles = model.trainer().troubles();
        if (!troubles.isEmpty()) {
            topics.getChildren().add(new Troubles(troubles));
        }
        topics.getStyleClass().add(Styles.TIGHT);
        return topics;
    }

    private VBox answerPart() {
        final Node buttons =
                Buttons.row(
                        Buttons.main(PracticeTexts.of("mark"), model::answer),
                        lines,
                        rule,
                        other());
        final VBox part = new VBox(answering, said(model.notKept()), said(model.mayEnd()), buttons);
        part.getStyleClass().add(Styles.TIGHT);
        return part;
    }

    private Button other() {
        final Button other = Buttons.plain(PracticeTexts.of("pass-by"), this::passBy);
        final Tooltip help = new Tooltip(PracticeTexts.of("pass-by.help"));
        other.setTooltip(help);
        other.setAccessibleHelp(help.getText());
        return other;
    }

    /** A line that takes room only while there is something to say. */
    private static Label said(final ReadOnlyStringProperty words) {
        final Label line = Texts.soft("");
        line.textProperty().bind(words);
        line.managedProperty().bind(words.isNotEmpty());
        return line;
    }

    private void show(final ExerciseModel doing) {
        final ExerciseView now = ExerciseView.of(doing, way(doing.exercise()));
        sums = doing.exercise().circuit().map(SumsNamed::of).orElse(List.of());
        question.getChildren()
                .setAll(new QuestionHead(doing.exercise(), model.skillState(), model.why().get()));
        answering.getChildren().setAll(now.answering());
        beside.getChildren().setAll(now.beside());
        showSums();
        offer(doing.figure().isPresent());
        view = Optional.of(now);
        IntoView.bring(answering, question);
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
