package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import wireworthy.marking.Comparison;

/**
 * A working drawn as a conductor: its lines are joints along a copper line. Where a learner's
 * figure leaves the sound working, a dashed branch leaves the conductor and the two run side by
 * side.
 */
public final class Conductor extends GridPane {
    private static final int TRUNK = 0;
    private static final int SOUND = 1;
    private static final int BRANCH = 2;
    private static final int WRONG = 3;

    /**
     * The sound working, beside a wrong one where the comparison holds one.
     *
     * @param wrongTitle heads the second column: "What gives 0.526 V"
     */
    public Conductor(final Comparison comparison, final String wrongTitle) {
        getStyleClass().add(Styles.WORKING);
        columns(comparison.partsAt().isPresent());
        int row = 0;
        if (comparison.partsAt().isPresent()) {
            add(head("A sound working"), SOUND, row);
            add(head(wrongTitle), WRONG, row++);
        }
        boolean parted = false;
        for (final Comparison.Row each : comparison.rows()) {
            parted |= each.parts();
            addRow(each, row++, parted);
        }
    }

    private void columns(final boolean beside) {
        final ColumnConstraints wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        wide.setPercentWidth(beside ? 46 : 94);
        getColumnConstraints().setAll(new ColumnConstraints(), wide);
        if (beside) {
            final ColumnConstraints other = new ColumnConstraints();
            other.setHgrow(Priority.ALWAYS);
            other.setPercentWidth(44);
            getColumnConstraints().addAll(new ColumnConstraints(), other);
        }
    }

    private void addRow(final Comparison.Row row, final int at, final boolean parted) {
        add(WorkingStrip.rail(), TRUNK, at);
        add(sound(row), SOUND, at);
        if (parted) {
            add(branch(), BRANCH, at);
            add(wrong(row), WRONG, at);
        }
    }

    private static Node sound(final Comparison.Row row) {
        final List<Node> parts = new ArrayList<>();
        parts.add(WorkingStrip.small(formula(row)));
        parts.add(WorkingStrip.numbers(row.sound().numbers()));
        if (row.parts()) {
            parts.add(new Badge(Verdict.SOUND, row.sound().ref().quantity().words()));
        }
        row.sound().source().ifPresent(source -> parts.add(WorkingStrip.small(source.text())));
        if (!row.sound().note().isEmpty()) {
            parts.add(WorkingStrip.small(row.sound().note()));
        }
        return cell(parts, row.parts() ? Optional.of(Styles.SOUND) : Optional.empty());
    }

    private static String formula(final Comparison.Row row) {
        final String subject = row.sound().subject();
        return subject.isEmpty() ? row.sound().formula() : subject + ": " + row.sound().formula();
    }

    private static Node wrong(final Comparison.Row row) {
        final List<Node> parts = new ArrayList<>();
        parts.add(WorkingStrip.small(row.sound().ref().quantity().words()));
        final String numbers = row.wrong().orElse(row.sound().numbers());
        if (row.parts()) {
            parts.add(WorkingStrip.numbers(numbers));
            parts.add(new Badge(Verdict.UNSOUND, "here they part"));
        } else {
            parts.add(Texts.soft(numbers));
        }
        return cell(parts, row.parts() ? Optional.of(Styles.UNSOUND) : Optional.empty());
    }

    private static Node cell(final List<Node> parts, final Optional<String> style) {
        final VBox cell = new VBox();
        cell.getChildren().setAll(parts);
        cell.getStyleClass().add(Styles.WORKING_LINE);
        style.ifPresent(cell.getStyleClass()::add);
        return cell;
    }

    private static Label head(final String text) {
        final Label label = WorkingStrip.small(text);
        label.getStyleClass().add(Styles.STRONG);
        return label;
    }

    private static Node branch() {
        final Line dashed = new Line();
        dashed.getStyleClass().add(Styles.BRANCH);
        final StackPane cell = new StackPane(dashed);
        cell.getStyleClass().add(Styles.BRANCH_CELL);
        dashed.setStartY(0);
        dashed.setEndY(1);
        cell.heightProperty().subscribe(h -> dashed.setEndY(Math.max(1, h.doubleValue() - 6)));
        dashed.setManaged(false);
        dashed.layoutXProperty().bind(cell.widthProperty().divide(2));
        return cell;
    }
}
