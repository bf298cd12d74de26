package wireworthy.window.evening;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import wireworthy.evening.called.CalledGroup;
import wireworthy.window.NextFrame;
import wireworthy.window.Shell;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Scrolling;

/** The problems of a sheet on the wall: the question, its way line by line, what was called out. */
final class ProjectorView extends ProjectorWall {
    private static final double ACROSS = 40;
    private static final double DOWN = 24;

    /** Under this width, in text sizes, what was called out stands under the question. */
    private static final double ROOM_FOR_BOTH = 34;

    private static final double QUESTION = 63;

    private final ProjectorModel model;
    private final ProjectorBar bar;
    private Optional<Wall> on = Optional.empty();

    /**
     * @param leave goes back to where this was opened
     */
    ProjectorView(final ProjectorModel model, final Shell shell, final Runnable leave) {
        super(ACROSS, DOWN);
        this.model = model;
        bar = new ProjectorBar(model, ends(shell, leave));
        setBottom(bar);
        final ProjectorKeys keys = new ProjectorKeys(model, bar.field(), this::back, leave);
        addEventFilter(KeyEvent.KEY_PRESSED, keys);
        addEventFilter(KeyEvent.KEY_TYPED, keys::handleTyped);
        model.task().subscribe(task -> task.ifPresent(this::turnTo));
    }

    private void turnTo(final ProjectorTask task) {
        on.ifPresent(Wall::close);
        final Wall next = new Wall(task);
        on = Optional.of(next);
        bar.turnTo(task);
        next.arrange();
        bar.field().requestFocus();
    }

    /** Closes what is open beside the question; false where nothing is. */
    private boolean back() {
        final boolean open =
                model.task().get().filter(it -> it.opened().get().isPresent()).isPresent();
        model.task().get().ifPresent(ProjectorTask::close);
        return open;
    }

    @Override
    void sized() {
        on.ifPresent(Wall::arrange);
    }

    /** One question on the wall. */
    private final class Wall {
        private final ProjectorTask task;
        private final ProjectorQuestion question;
        private final ProjectorCalled called;
        private final ScrollPane page = Pages.scroll(ProjectorTexts.of("question"), new VBox());
        private final ScrollPane side = Pages.scroll(ProjectorTexts.of("called"), new VBox());
        private final Subscription listening;

        Wall(final ProjectorTask task) {
            this.task = task;
            question = new ProjectorQuestion(task);
            called = new ProjectorCalled(task);
            listening =
                    task.shown()
                            .subscribe(any -> reveal())
                            .and(task.called().subscribe(any -> arrangeCalled()))
                            .and(task.told().subscribe(any -> arrangeCalled()))
                            .and(task.opened().subscribe(this::open));
        }

        void close() {
            listening.unsubscribe();
        }

        private void reveal() {
            question.redraw();
            NextFrame.then(page, () -> Scrolling.to(page, question.end()));
        }

        private void arrangeCalled() {
            called.redraw();
            arrange();
        }

        private void open(final Optional<CalledGroup> group) {
            arrange();
            group.ifPresentOrElse(any -> page.setVvalue(0), () -> bar.field().requestFocus());
        }

        private Node center() {
            return task.opened()
                    .get()
                    .<Node>map(group -> new ProjectorWhy(group, task::close))
                    .orElse(question);
        }

        /** Beside each other, or where text is large for the window one under the other. */
        void arrange() {
            final double wide = getWidth() / textSize();
            final boolean beside = wide >= ROOM_FOR_BOTH;
            // Two workings side by side need the whole wall.
            final boolean nothing =
                    task.called().get().isEmpty() || task.opened().get().isPresent();
            final VBox whole = new VBox(center());
            side.setContent(new VBox());
            if (!nothing && !beside) {
                whole.getChildren().add(called);
            } else if (!nothing) {
                side.setContent(called);
            }
            page.setContent(whole);
            question.arrange(nothing || !beside ? wide : wide * QUESTION / 100);
            show(nothing || !beside ? page : two());
        }

        private GridPane two() {
            final GridPane two = new GridPane();
            two.getColumnConstraints().setAll(column(QUESTION), column(100 - QUESTION));
            final RowConstraints row = new RowConstraints();
            row.setVgrow(Priority.ALWAYS);
            two.getRowConstraints().setAll(row);
            two.addRow(0, page, side);
            return two;
        }

        private static ColumnConstraints column(final double percent) {
            final ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(percent);
            return column;
        }
    }
}
