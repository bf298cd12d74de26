package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** Steps as rows that can be moved, and beside them the first that is out of place. */
final class OrderView implements ExerciseView {
    private final OrderModel model;
    private final WayOn way;
    private final VBox rows = new VBox();
    private final VBox beside = new VBox();

    OrderView(final OrderModel model, final WayOn way) {
        this.model = model;
        this.way = way;
        rows.getStyleClass().add(Styles.TIGHT);
        rows.setAccessibleText(model.exercise().ask());
        beside.getStyleClass().add(Styles.TIGHT);
        model.order().addListener((ListChangeListener<Integer>) change -> redraw());
        redraw();
        model.marked().subscribe(this::show);
    }

    private void show(final Optional<OrderModel.Marked> marked) {
        beside.getChildren().setAll(said(marked));
        if (marked.isPresent()) {
            IntoView.bring(beside);
        }
    }

    private void redraw() {
        final List<Node> all = new ArrayList<>();
        for (int i = 0; i < model.order().size(); i++) {
            final int row = i;
            all.add(
                    new StepRow(
                            new StepRow.Step(i + 1, model.order().size(), model.step(i)),
                            (by, then) -> then.accept(row(model.move(row, by)))));
        }
        rows.getChildren().setAll(all);
    }

    private StepRow row(final int number) {
        return (StepRow) rows.getChildren().get(number);
    }

    private List<Node> said(final Optional<OrderModel.Marked> marked) {
        if (marked.isEmpty()) {
            return List.of(Texts.soft(PracticeTexts.of("order.waiting")));
        }
        final var out = marked.orElseThrow().outAt();
        return out.isPresent() ? out(out.getAsInt()) : inOrder();
    }

    private List<Node> inOrder() {
        final VBox words = new VBox(Texts.strong(PracticeTexts.of("order.sound")));
        words.getStyleClass().add(Styles.TIGHT);
        for (int i = 0; i < model.order().size(); i++) {
            words.getChildren()
                    .addAll(
                            Texts.paragraph(line(i, model.step(i))),
                            Texts.soft(model.exercise().why(i)));
        }
        return List.of(new Notice(Verdict.SOUND, words), way.sound());
    }

    private static String line(final int row, final String step) {
        return PracticeTexts.of("order.step", "number", row + 1, "step", step);
    }

    private List<Node> out(final int row) {
        final VBox words =
                new VBox(
                        Texts.strong(
                                PracticeTexts.of(
                                        "order.out", "number", row + 1, "step", model.step(row))),
                        Texts.paragraph(
                                PracticeTexts.of(
                                        "order.belongs",
                                        "step",
                                        model.exercise().stages().get(row).text(),
                                        "why",
                                        model.exercise().why(row))),
                        Texts.soft(PracticeTexts.of("order.rest")));
        return List.of(
                new Notice(Verdict.UNSOUND, words),
                way.after(way.plain(PracticeTexts.of("order.again"), model::answer)));
    }

    @Override
    public Node answering() {
        return rows;
    }

    @Override
    public Node beside() {
        return beside;
    }

    @Override
    public void focus() {
        row(0).requestFocus();
    }
}
