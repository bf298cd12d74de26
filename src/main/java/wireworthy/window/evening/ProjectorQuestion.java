package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.evening.Asked;
import wireworthy.evening.called.WallLine;
import wireworthy.marking.Comparison;
import wireworthy.practice.CircuitLabels;
import wireworthy.practice.Drawing;
import wireworthy.practice.Exercise;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.CircuitDrawing;
import wireworthy.window.parts.Conductor;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A question on the wall: situation, question, drawing, and as much of the way as is shown. */
final class ProjectorQuestion extends VBox {
    /** Under this width, in text sizes, drawing and way stand one under the other. */
    private static final double ROOM_FOR_BOTH = 37;

    private final ProjectorTask task;
    private final VBox way = new VBox();
    private final Optional<Node> drawing;
    private Pane both = new VBox();

    ProjectorQuestion(final ProjectorTask task) {
        this.task = task;
        drawing = drawing(task.exercise());
        getStyleClass().addAll(Styles.PAGE, Styles.TIGHT);
        way.getStyleClass().add(Styles.TIGHT);
        getChildren().add(Texts.paragraph(Texts.kept(task.exercise().text())));
        getChildren().add(Texts.strong(Texts.kept(task.asking().ask())));
        final List<String> lettered = task.asking().lettered();
        for (int i = 0; i < lettered.size(); i++) {
            getChildren()
                    .add(
                            Texts.paragraph(
                                    ProjectorTexts.of(
                                            "lettered",
                                            "letter",
                                            Asked.letter(i),
                                            "text",
                                            Texts.kept(lettered.get(i)))));
        }
        getChildren().add(both);
        redraw();
    }

    private static Optional<Node> drawing(final Exercise exercise) {
        if (exercise.drawing() == Drawing.NONE) {
            return Optional.empty();
        }
        final CircuitLabels labels = CircuitLabels.of(exercise);
        return Optional.of(
                Cards.card(
                        new CircuitDrawing(
                                CircuitDrawing.Load.valueOf(exercise.drawing().name()),
                                new CircuitDrawing.Labels(
                                        labels.supply(),
                                        labels.cable(),
                                        labels.length(),
                                        labels.taken(),
                                        labels.beside()))));
    }

    /** Puts drawing and way side by side, or one under the other. */
    void arrange(final double textSizes) {
        final boolean beside = textSizes >= ROOM_FOR_BOTH && drawing.isPresent();
        if (beside != both instanceof HBox || both.getChildren().isEmpty()) {
            both.getChildren().clear();
            final Pane next = beside ? new HBox() : new VBox();
            next.getStyleClass()
                    .addAll(Styles.SIDE_BY_SIDE, beside ? Styles.BESIDE : Styles.UNDER_IT);
            if (next instanceof HBox row) {
                row.setFillHeight(false);
            }
            drawing.ifPresent(next.getChildren()::add);
            next.getChildren().add(way);
            HBox.setHgrow(way, Priority.ALWAYS);
            getChildren().set(getChildren().indexOf(both), next);
            both = next;
        }
    }

    /** Shows the lines that are to be shown. */
    void redraw() {
        final List<WallLine> shown = task.lines().subList(0, task.shown().get());
        final List<Comparison.Row> rows = new ArrayList<>();
        final List<Node> parts = new ArrayList<>();
        for (final WallLine line : shown) {
            if (line instanceof WallLine.Sum sum) {
                rows.add(sum.row());
            } else if (line instanceof WallLine.Words words) {
                parts.add(Texts.strong(Texts.kept(words.text())));
                parts.add(Texts.paragraph(Texts.kept(words.why())));
            }
        }
        if (!rows.isEmpty()) {
            parts.add(0, new Conductor(new Comparison(rows), ""));
        }
        way.getChildren().setAll(parts);
    }

    /** Where the last line shown stands. */
    Node end() {
        return way;
    }
}
