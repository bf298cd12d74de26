package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import wireworthy.marking.Comparison;
import wireworthy.rules.Words;

/**
 * A working drawn as a conductor: its lines are joints along a copper line. Where a learner's
 * figure leaves the sound working, a dashed branch leaves the conductor and the two run side by
 * side.
 */
public final class Conductor extends GridPane {
    private static final String GIVES = " = ";
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
            add(head(PartsTexts.of("sound-working")), SOUND, row);
            add(head(wrongTitle), WRONG, row++);
        }
        boolean parted = false;
        for (final Comparison.Row each : comparison.rows()) {
            final String parting = PartsTexts.of(parted ? "part-again" : "part");
            parted |= each.parts();
            addRow(each, row++, parted, parting);
        }
    }

    private void columns(final boolean beside) {
        getColumnConstraints().setAll(narrow(), wide());
        if (beside) {
            getColumnConstraints().addAll(narrow(), wide());
        }
    }

    private static ColumnConstraints narrow() {
        return new ColumnConstraints();
    }

    /** The wide columns share what room there is; their text wraps. */
    private static ColumnConstraints wide() {
        final ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(0);
        column.setPrefWidth(1);
        column.setHgrow(Priority.ALWAYS);
        return column;
    }

    private void addRow(
            final Comparison.Row row, final int at, final boolean parted, final String parting) {
        add(rail(), TRUNK, at);
        add(sound(row), SOUND, at);
        if (parted) {
            add(branch(), BRANCH, at);
            add(wrong(row, parting), WRONG, at);
        }
    }

    private static Node sound(final Comparison.Row row) {
        final List<Node> parts = new ArrayList<>();
        parts.add(small(formula(row)));
        parts.add(numbers(row.sound().numbers()));
        if (row.parts()) {
            parts.add(new Badge(Verdict.SOUND, Words.ofRule(row.sound().rule())));
        }
        row.sound().source().ifPresent(source -> parts.add(small(source.text())));
        if (!row.sound().note().isEmpty()) {
            parts.add(small(row.sound().note()));
        }
        return cell(parts, row.parts() ? Optional.of(Styles.SOUND) : Optional.empty());
    }

    private static String formula(final Comparison.Row row) {
        final String subject = row.sound().subject();
        return subject.isEmpty() ? row.sound().formula() : subject + ": " + row.sound().formula();
    }

    private static Node wrong(final Comparison.Row row, final String parting) {
        final List<Node> parts = new ArrayList<>();
        parts.add(small(row.sound().ref().quantity().words()));
        final String numbers = row.wrong().orElse(row.sound().numbers());
        if (row.parts()) {
            parts.add(numbers(numbers));
            parts.add(new Badge(Verdict.UNSOUND, parting));
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
        final Label label = small(text);
        label.getStyleClass().add(Styles.STRONG);
        return label;
    }

    /** A piece of the copper line with its joint. */
    public static Node rail() {
        final Region joint = new Region();
        joint.getStyleClass().add(Styles.WORKING_JOINT);
        final StackPane rail = new StackPane(joint);
        rail.getStyleClass().add(Styles.WORKING_RAIL);
        return rail;
    }

    private static Label small(final String text) {
        final Label label = Texts.soft(text);
        label.getStyleClass().add(Styles.SMALL);
        return label;
    }

    /** The sum plain, what comes of it strong. */
    private static TextFlow numbers(final String numbers) {
        final int end = numbers.lastIndexOf(GIVES);
        final int result = end < 0 ? 0 : end + GIVES.length();
        return new TextFlow(
                text(numbers.substring(0, result), Styles.PROSE_TEXT),
                text(numbers.substring(result), Styles.PROSE_TEXT, Styles.STRONG));
    }

    private static Text text(final String words, final String... styles) {
        final Text text = new Text(Texts.kept(words));
        text.getStyleClass().addAll(List.of(styles));
        return text;
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
