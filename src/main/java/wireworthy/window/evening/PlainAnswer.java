package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.evening.handin.Reply;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.window.ExerciseModel;
import wireworthy.window.ExerciseView;
import wireworthy.window.FigureField;
import wireworthy.window.TypedFigure;
import wireworthy.window.WayOn;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A problem put down and kept; nothing is said of what is right. */
final class PlainAnswer implements AnswerPart {
    private final SheetWork work;
    private final Runnable keep;
    private final List<TypedFigure> figures = new ArrayList<>();
    private final List<FigureField> fields = new ArrayList<>();
    private final Optional<ExerciseModel> other;
    private final Node answering;
    private final Runnable focus;

    /**
     * @param keep keeps what is typed
     */
    PlainAnswer(final SheetWork work, final Runnable keep) {
        this.work = work;
        this.keep = keep;
        final Exercise exercise = work.exercise();
        if (exercise instanceof Problem problem) {
            other = Optional.empty();
            answering = figures(problem);
            focus = () -> fields.get(0).focus();
        } else {
            final ExerciseModel model =
                    ExerciseModel.of(exercise, new SheetDesk(this::entered), any -> {});
            PutDown.back(model, before());
            final ExerciseView view =
                    ExerciseView.of(
                            model, new WayOn(() -> {}, Optional.empty(), () -> {}, () -> {}));
            other = Optional.of(model);
            answering = view.answering();
            focus = view::focus;
        }
    }

    /** Enter picks an option; that alone keeps nothing: it may have been a slip of the hand. */
    private Optional<String> entered() {
        return Optional.empty();
    }

    private List<String> before() {
        return work.reply().map(Reply::typed).orElse(List.of());
    }

    private VBox figures(final Problem problem) {
        final VBox box = new VBox();
        box.getStyleClass().add(Styles.TIGHT);
        final boolean several = problem.parts().size() > 1;
        for (int i = 0; i < problem.parts().size(); i++) {
            final Problem.Part part = problem.parts().get(i);
            final TypedFigure figure = new TypedFigure(part.ref().quantity());
            figure.text().set(i < before().size() ? before().get(i) : "");
            final int number = i;
            final FigureField field = new FigureField(figure, () -> entered(number));
            figures.add(figure);
            fields.add(field);
            if (several) {
                box.getChildren()
                        .add(
                                Texts.strong(
                                        EveningTexts.of(
                                                "work.part", "number", i + 1, "ask", part.ask())));
            }
            box.getChildren().add(field);
        }
        return box;
    }

    /** Enter goes to the next field; in the last it keeps. */
    private void entered(final int number) {
        if (number + 1 < fields.size()) {
            fields.get(number + 1).focus();
        } else {
            keep.run();
        }
    }

    @Override
    public Node answering() {
        return answering;
    }

    @Override
    public List<Button> buttons() {
        return List.of(Buttons.main(EveningTexts.of("work.keep"), keep));
    }

    @Override
    public Node beside() {
        final VBox box = new VBox(Texts.soft(EveningTexts.of("work.waiting")));
        box.getStyleClass().add(Styles.TIGHT);
        for (int number = 1; number <= work.size(); number++) {
            box.getChildren().add(Texts.paragraph(line(number)));
        }
        return box;
    }

    private String line(final int number) {
        final String typed =
                work.handIn()
                        .reply(number)
                        .map(
                                it ->
                                        String.join(
                                                ", ",
                                                it.typed().stream()
                                                        .filter(t -> !t.isEmpty())
                                                        .toList()))
                        .orElse("");
        if (typed.isEmpty()) {
            return EveningTexts.of("work.line.open", "number", number);
        }
        final String key = work.note(number).isPresent() ? "work.line.note" : "work.line";
        return EveningTexts.of(key, "number", number, "typed", typed);
    }

    @Override
    public List<String> typed() {
        return other.map(PutDown::of)
                .orElseGet(() -> figures.stream().map(it -> it.text().get()).toList());
    }

    @Override
    public void focus() {
        focus.run();
    }
}
