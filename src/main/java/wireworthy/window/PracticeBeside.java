package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.marking.Comparison;
import wireworthy.marking.Mark;
import wireworthy.practice.LineTexts;
import wireworthy.practice.Problem;
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
        model.mark().subscribe(any -> redrawUnlessFillingIn());
    }

    /** While a line is filled in, its field keeps the keyboard: the lines show their own marks. */
    private void redrawUnlessFillingIn() {
        if (model.beside().get() != PracticeModel.Beside.LINES) {
            redraw();
        }
    }

    private void redraw() {
        getChildren()
                .setAll(
                        switch (model.beside().get()) {
                            case NOTHING_YET -> waiting();
                            case LINES -> List.of();
                            case RULE -> rule();
                            case SOUND -> marked(Verdict.SOUND);
                            case UNSOUND -> marked(Verdict.UNSOUND);
                            case SETTLING -> settling();
                            case ASKED_BACK -> askedBack();
                        });
        if (model.beside().get() == PracticeModel.Beside.LINES) {
            model.lines().get().ifPresent(this::fillIn);
        }
    }

    private void fillIn(final LinesModel lines) {
        final LinesView view = new LinesView(model, lines, this::wayOn);
        getChildren().setAll(view);
        view.focus(model.settlingLine().orElseGet(lines::firstOpen));
    }

    private Node wayOn(final Mark mark) {
        return mark.isSound() ? afterSound() : afterUnsoundLines();
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

    /** The workings would tell the line that is asked for, so they wait. */
    private List<Node> settling() {
        return List.of(
                new Notice(Verdict.UNSOUND, explanation()),
                Buttons.row(
                        inkFilled(
                                Buttons.plain(
                                        LineTexts.of("answer-that-line"), model::askSettlingLine)),
                        Buttons.plain(LineTexts.of("workings"), model::showWorkings),
                        Buttons.plain("Work it again", () -> andAnswer(model::again))));
    }

    private Node afterUnsoundLines() {
        return Buttons.row(
                advancing("One like it, new numbers", model::twin),
                Buttons.plain(LineTexts.of("workings"), model::explain));
    }

    private Button advancing(final String does, final Runnable action) {
        return inkFilled(Buttons.plain(does, () -> andAnswer(action)));
    }

    private static Button inkFilled(final Button button) {
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
}
