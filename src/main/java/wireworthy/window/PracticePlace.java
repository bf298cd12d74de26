package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import wireworthy.practice.Problem;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.CircuitDrawing;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Telling;

/**
 * Problems without end: the problem on the left all the time, what there is to say on the right.
 */
public final class PracticePlace implements Place {
    /** The name under which the settings keep this place. */
    public static final String ID = "practice";

    static final String TITLE = "Practice";

    private static final Quantity[] LOAD_LABELS = {
        Quantity.LOAD_POWER, Quantity.LOAD_CURRENT, Quantity.CIRCUIT_CURRENT, Quantity.RESISTANCE
    };

    private final PracticeModel model;
    private final Consumer<Problem> toLesson;
    private final VBox problem = new VBox();
    private final Label understood = Texts.soft("");
    private final Label notKept = Texts.soft("");
    private final TextField answer = new TextField();

    /**
     * The place.
     *
     * @param toLesson opens the lesson that belongs to a problem
     */
    public PracticePlace(final PracticeModel model, final Consumer<Problem> toLesson) {
        this.model = model;
        this.toLesson = toLesson;
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
        final PracticeBeside right = new PracticeBeside(model, toLesson, answer::requestFocus);
        final ScrollPane left = Pages.page("The problem", leftParts().toArray(VBox[]::new));
        left.getStyleClass().add(Styles.BENCH_LEFT);
        final ScrollPane page = Pages.page("What there is to say", right);
        HBox.setHgrow(page, Priority.ALWAYS);
        model.problem().subscribe(p -> p.ifPresentOrElse(this::show, this::none));
        final HBox bench = new HBox(left, page);
        bench.getStyleClass().add(Styles.BENCH);
        return bench;
    }

    @Override
    public void shown() {
        if (model.problem().get().isEmpty()) {
            model.next();
        }
        // The click or key that led here still has its own say about the focus.
        Platform.runLater(answer::requestFocus);
    }

    private List<VBox> leftParts() {
        final VBox choice = new VBox(topics());
        choice.getStyleClass().add(Styles.TIGHT);
        problem.getStyleClass().add(Styles.TIGHT);
        return List.of(choice, problem, answerPart());
    }

    private ComboBox<Optional<Trainer.Topic>> topics() {
        final ComboBox<Optional<Trainer.Topic>> topics = new ComboBox<>();
        topics.setAccessibleText("Topic to practise");
        topics.getItems().add(Optional.empty());
        model.trainer().topics().forEach(topic -> topics.getItems().add(Optional.of(topic)));
        topics.setConverter(new TopicName());
        topics.setValue(Optional.empty());
        topics.valueProperty()
                .addListener(
                        (any, old, now) -> {
                            model.topic().set(now.map(Trainer.Topic::id));
                            model.next();
                        });
        topics.setMaxWidth(Double.MAX_VALUE);
        return topics;
    }

    private static final class TopicName extends StringConverter<Optional<Trainer.Topic>> {
        @Override
        public String toString(final Optional<Trainer.Topic> topic) {
            return topic.map(Trainer.Topic::title).orElse("All topics: let the program choose");
        }

        @Override
        public Optional<Trainer.Topic> fromString(final String text) {
            return Optional.empty();
        }
    }

    private VBox answerPart() {
        answer.getStyleClass().add(Styles.ANSWER);
        answer.textProperty().bindBidirectional(model.typed());
        answer.setOnAction(event -> model.answer());
        understood.textProperty().bind(model.understood());
        notKept.textProperty().bind(model.notKept());
        notKept.managedProperty().bind(model.notKept().isNotEmpty());
        final VBox part =
                new VBox(
                        answer,
                        understood,
                        notKept,
                        Buttons.row(
                                Buttons.main("Mark my answer", model::answer),
                                Buttons.plain("Line by line", model::lineByLine),
                                Buttons.plain("Show the rule", model::showRule)));
        part.getStyleClass().add(Styles.TIGHT);
        return part;
    }

    private void show(final Problem now) {
        final Label heading = new Label(heading(now));
        heading.getStyleClass().addAll(Styles.COPPER_TEXT, Styles.STRONG, Styles.SMALL);
        heading.setWrapText(true);
        final Label why = Texts.soft(model.why().get());
        why.getStyleClass().add(Styles.SMALL);
        problem.getChildren()
                .setAll(
                        heading,
                        why,
                        Texts.paragraph(now.text()),
                        strong(now.ask()),
                        Cards.card(drawing(now)));
        final String asked = now.asked().quantity().words();
        answer.setPromptText(asked + ", " + unit(now.asked().quantity()));
        answer.setAccessibleText("Your answer: " + asked + " in " + unit(now.asked().quantity()));
    }

    private static Label strong(final String text) {
        final Label label = Texts.paragraph(text);
        label.getStyleClass().add(Styles.STRONG);
        return label;
    }

    private static String unit(final Quantity quantity) {
        final String unit = wireworthy.rules.FigureText.unit(quantity.dimension());
        return unit.isEmpty() ? "a number" : unit;
    }

    private String heading(final Problem now) {
        final String volts =
                figure(now, Quantity.SUPPLY_VOLTAGE).map(text -> " · " + text).orElse("");
        return model.skillState() + volts;
    }

    private static CircuitDrawing drawing(final Problem now) {
        final String load =
                Stream.of(LOAD_LABELS)
                        .map(quantity -> figure(now, quantity))
                        .flatMap(Optional::stream)
                        .findFirst()
                        .orElse("");
        return new CircuitDrawing(
                CircuitDrawing.Load.valueOf(now.drawing().name()),
                new CircuitDrawing.Labels(
                        figure(now, Quantity.SUPPLY_VOLTAGE).orElse(""),
                        figure(now, Quantity.SECTION).orElse(""),
                        figure(now, Quantity.ONE_WAY_LENGTH).orElse(""),
                        load));
    }

    private static Optional<String> figure(final Problem now, final Quantity quantity) {
        return now.worked()
                .typed(Ref.circuit(quantity))
                .map(read -> Telling.result(quantity, read.value()));
    }

    private void none() {
        problem.getChildren()
                .setAll(
                        new Notice(
                                Verdict.CAUTION,
                                "No problem bank could be read. "
                                        + String.join(" ", model.trainer().troubles())));
    }
}
