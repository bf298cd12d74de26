package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import wireworthy.marking.Comparison;
import wireworthy.marking.Mark;
import wireworthy.practice.Problem;
import wireworthy.window.PracticeModel.LineToFill;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Conductor;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Danger;

/** The right side of Practice: the mark, the workings, the lines to fill in. */
final class PracticeBeside extends VBox {
    private final PracticeModel model;
    private final Consumer<Problem> toLesson;
    private final Runnable toAnswer;

    PracticeBeside(
            final PracticeModel model, final Consumer<Problem> toLesson, final Runnable toAnswer) {
        this.model = model;
        this.toLesson = toLesson;
        this.toAnswer = toAnswer;
        getStyleClass().add(Styles.TIGHT);
        model.beside().subscribe(any -> redraw());
        model.mark().subscribe(any -> redraw());
    }

    private void redraw() {
        getChildren()
                .setAll(
                        switch (model.beside().get()) {
                            case NOTHING_YET -> waiting();
                            case LINES -> lines();
                            case RULE -> rule();
                            case SOUND -> marked(Verdict.SOUND);
                            case UNSOUND -> marked(Verdict.UNSOUND);
                            case ASKED_BACK -> askedBack();
                        });
    }

    private static List<Node> waiting() {
        return List.of(
                Texts.soft(
                        "Type your figure and press Enter. A figure without a unit is taken in the"
                                + " unit asked for. Not sure where to begin? Fill in the working line"
                                + " by line, or look at the rule."));
    }

    private List<Node> askedBack() {
        return List.of(new Notice(Verdict.CAUTION, explanation()));
    }

    private String explanation() {
        return model.mark().get().map(Mark::explanation).orElse("");
    }

    private List<Node> marked(final Verdict verdict) {
        final List<Node> parts = new ArrayList<>();
        final Mark mark = model.mark().get().orElseThrow();
        parts.add(new Notice(verdict, mark.explanation()));
        parts.add(new Conductor(model.comparison(), "What gives " + mark.understood()));
        danger(mark).ifPresent(parts::add);
        parts.add(verdict == Verdict.SOUND ? afterSound() : afterUnsound());
        return parts;
    }

    private static Optional<Node> danger(final Mark mark) {
        return mark.danger()
                .filter(danger -> danger == Danger.FIRE)
                .map(
                        danger ->
                                new Badge(
                                        Verdict.CAUTION,
                                        "On a real vehicle this slip could start a fire."));
    }

    private Node afterSound() {
        return Buttons.row(
                advancing("Next problem", model::next),
                Buttons.plain("One like it, new numbers", () -> andAnswer(model::twin)));
    }

    private Node afterUnsound() {
        return Buttons.row(
                advancing("One like it, new numbers", model::twin),
                Buttons.plain("Work it again", () -> andAnswer(model::again)),
                Buttons.plain("Back to the lesson", this::lesson));
    }

    private Button advancing(final String does, final Runnable action) {
        final Button button = Buttons.plain(does, () -> andAnswer(action));
        button.getStyleClass().setAll("button", Styles.MAIN);
        return button;
    }

    private void andAnswer(final Runnable action) {
        action.run();
        toAnswer.run();
    }

    private void lesson() {
        model.problem().get().ifPresent(toLesson);
    }

    private List<Node> rule() {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle("The rule, in the order one works it"));
        int number = 1;
        for (final Comparison.Row row :
                Comparison.sound(problem().worked(), problem().asked()).rows()) {
            parts.add(Texts.paragraph(number++ + ".  " + row.sound().formula()));
        }
        parts.add(Texts.soft("An answer given now counts as worked with help."));
        return List.of(Cards.card(parts.toArray(Node[]::new)));
    }

    private Problem problem() {
        return model.problem().get().orElseThrow();
    }

    private List<Node> lines() {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle("Line by line"));
        if (model.lines().isEmpty()) {
            parts.add(Texts.paragraph("This sum has one line only: your answer on the left."));
        } else {
            parts.add(
                    Texts.soft(
                            "Fill in what you like; each line is marked when you leave it. The last"
                                    + " line is your answer on the left."));
        }
        model.lines().stream().map(this::row).forEach(parts::add);
        return List.of(Cards.card(parts.toArray(Node[]::new)));
    }

    private Node row(final LineToFill line) {
        final Label name = Texts.paragraph(line.name());
        final TextField field = new TextField();
        field.setAccessibleText(line.name());
        field.textProperty().bindBidirectional(line.typed());
        field.setOnAction(event -> model.lineLeft());
        field.focusedProperty()
                .addListener(
                        (any, was, is) -> {
                            if (!is) {
                                model.lineLeft();
                            }
                        });
        final VBox said = new VBox();
        line.mark().subscribe(mark -> said.getChildren().setAll(said(mark)));
        final VBox row = new VBox(name, new HBox(field), said);
        row.getStyleClass().add(Styles.WORKING_LINE);
        return row;
    }

    private static List<Node> said(final Optional<Mark> mark) {
        return mark.map(PracticeBeside::said).orElse(List.of());
    }

    private static List<Node> said(final Mark mark) {
        if (mark.asksBack()) {
            return List.of(new Notice(Verdict.CAUTION, mark.explanation()));
        }
        return List.of(
                new Notice(mark.isSound() ? Verdict.SOUND : Verdict.UNSOUND, mark.explanation()));
    }
}
