package wireworthy.window.evening;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import wireworthy.evening.handin.Reply;
import wireworthy.practice.Exercise;
import wireworthy.window.ExerciseModel;
import wireworthy.window.ExerciseView;
import wireworthy.window.FigureModel;
import wireworthy.window.WayOn;
import wireworthy.window.parts.Buttons;

/** A problem done as in practice; of each answer the first one counts for the hand-in. */
final class ToldAnswer implements AnswerPart {
    private final SheetWork work;
    private final ExerciseModel model;
    private final ExerciseView view;
    private boolean puttingBack = true;

    /**
     * @param onward goes to the next problem
     * @param kept told why an answer could not be kept, or nothing where it was
     */
    ToldAnswer(
            final SheetWork work,
            final EveningDesk desk,
            final Runnable onward,
            final Consumer<String> kept) {
        this.work = work;
        final Exercise exercise = work.exercise();
        final int number = work.problem().get();
        model = ExerciseModel.of(exercise, new SheetDesk(() -> keep(number)), kept);
        PutDown.marked(model, work.reply().map(Reply::typed).orElse(List.of()));
        puttingBack = false;
        view =
                ExerciseView.of(
                        model,
                        new WayOn(
                                onward,
                                Optional.empty(),
                                () -> desk.toLesson(exercise.template().bank()),
                                this::focus));
    }

    private Optional<String> keep(final int number) {
        return puttingBack ? Optional.empty() : work.keepFirst(number, PutDown.of(model));
    }

    @Override
    public Node answering() {
        return view.answering();
    }

    @Override
    public List<Button> buttons() {
        final Button mark = Buttons.main(EveningTexts.of("work.mark"), model::answer);
        final Button lines =
                Buttons.plain(
                        EveningTexts.of("work.lines"),
                        () -> model.figure().ifPresent(FigureModel::lineByLine));
        return model.figure().isPresent() ? List.of(mark, lines) : List.of(mark);
    }

    @Override
    public Node beside() {
        return view.beside();
    }

    @Override
    public List<String> typed() {
        return PutDown.of(model);
    }

    @Override
    public void focus() {
        view.focus();
    }
}
