package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wireworthy.marking.Mark;
import wireworthy.practice.LineTexts;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The working of the problem as a conductor whose lines are filled in one by one. */
final class LinesView extends VBox implements LineView.Doing {
    private final FigureModel model;
    private final LinesModel lines;
    private final List<LineView> views = new ArrayList<>();
    private final VBox end = new VBox();

    /**
     * The lines and, once the answer is marked, the way on.
     *
     * @param wayOn the buttons that fit a mark of the answer
     */
    LinesView(final FigureModel model, final Function<Mark, Node> wayOn) {
        this.model = model;
        this.lines = model.lines();
        getStyleClass().add(Styles.TIGHT);
        lines.rows().forEach(row -> views.add(new LineView(row, this)));
        final VBox conductor = new VBox();
        conductor.getChildren().setAll(views);
        lines.answer().mark().subscribe(mark -> end.getChildren().setAll(end(mark, wayOn)));
        final String lead = lines.rows().size() == 1 ? "one-line" : "lead";
        getChildren()
                .setAll(
                        Texts.subtitle(LineTexts.of("title")),
                        Texts.soft(LineTexts.of(lead)),
                        conductor,
                        end);
    }

    private static List<Node> end(final Optional<Mark> mark, final Function<Mark, Node> wayOn) {
        return mark.filter(now -> !now.asksBack()).map(wayOn).map(List::of).orElse(List.of());
    }

    /** Puts the keyboard into the field of a line. */
    void focus(final LineRow row) {
        views.get(lines.rows().indexOf(row)).focusField();
    }

    @Override
    public void left(final LineRow row) {
        model.leave(row);
    }

    @Override
    public void entered(final LineRow row) {
        model.leave(row);
        IntoView.bring(views.get(lines.rows().indexOf(row)));
        if (row.mark().get().filter(mark -> mark.isSound() || mark.follows()).isPresent()) {
            focus(lines.firstOpen());
        }
        if (!end.getChildren().isEmpty()) {
            IntoView.bring(views.get(views.size() - 1), end);
        }
    }

    @Override
    public void help(final LineRow row) {
        lines.help(row);
    }

    @Override
    public void ask(final LineRow row) {
        lines.ask(row);
    }
}
