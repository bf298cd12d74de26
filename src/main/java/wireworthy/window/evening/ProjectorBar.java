package wireworthy.window.evening;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** What the leader needs under the wall: the field for what is called out, and the ways on. */
final class ProjectorBar extends VBox {
    private final ProjectorModel model;
    private final Label title = Texts.strong("");
    private final Label said = Texts.paragraph("");
    private final TextField field = new TextField();
    private final Button line;
    private final Button back;
    private final Button tell;
    private final Button undo;
    private final Button previous;
    private final Button next;
    private Optional<Subscription> listening = Optional.empty();
    private Optional<ProjectorTask> on = Optional.empty();

    ProjectorBar(final ProjectorModel model, final ProjectorWall.Ends ends) {
        this.model = model;
        line = button("line", ProjectorTask::reveal);
        back = button("line-back", ProjectorTask::conceal);
        tell = button("tell", ProjectorTask::tell);
        undo = button("undo", ProjectorTask::undo);
        previous = Buttons.plain(ProjectorTexts.of("previous"), model::previous);
        next = Buttons.plain(ProjectorTexts.of("next"), model::next);
        getStyleClass().add(Styles.PROJECTOR_BAR);
        field.setAccessibleText(ProjectorTexts.of("field.read"));
        field.setOnAction(event -> on.ifPresent(this::take));
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        final FlowPane row = Buttons.row(title, field, undo, tell, line, back, previous, next);
        row.getChildren().addAll(ends.look(), ends.leave());
        row.getStyleClass().add(Styles.PROJECTOR_ROW);
        getChildren().setAll(said, row);
        new ProjectorBarFold(this, row, ends.look(), List.of(undo, back, previous, ends.leave()));
    }

    private Button button(final String key, final Consumer<ProjectorTask> does) {
        return Buttons.plain(ProjectorTexts.of(key), () -> on.ifPresent(does));
    }

    /** What is refused is marked: what is typed next takes its place. */
    private void take(final ProjectorTask task) {
        task.take();
        field.selectAll();
    }

    /** Speaks of another question. */
    void turnTo(final ProjectorTask task) {
        listening.ifPresent(Subscription::unsubscribe);
        on.ifPresent(before -> field.textProperty().unbindBidirectional(before.typed()));
        on = Optional.of(task);
        title.setText(task.title());
        final boolean letters = !task.asking().lettered().isEmpty();
        field.setPromptText(ProjectorTexts.of(letters ? "field.letters" : "field"));
        field.textProperty().bindBidirectional(task.typed());
        listening =
                Optional.of(
                        task.said()
                                .subscribe(said::setText)
                                .and(task.shown().subscribe(any -> offer(task)))
                                .and(task.called().subscribe(any -> offer(task)))
                                .and(task.told().subscribe(any -> offer(task))));
    }

    private void offer(final ProjectorTask task) {
        line.setDisable(task.shown().get() == task.lines().size());
        back.setDisable(task.shown().get() == 0);
        undo.setDisable(task.called().get().isEmpty());
        tell.setText(ProjectorTexts.of(task.told().get() ? "tell-not" : "tell"));
        previous.setDisable(!model.hasPrevious());
        next.setDisable(!model.hasNext());
    }

    /** Where what is called out is typed. */
    TextField field() {
        return field;
    }
}
