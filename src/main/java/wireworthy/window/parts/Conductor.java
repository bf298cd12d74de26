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
 * side; where the room is too narrow for two, the branch runs on under the conductor.
 */
public final class Conductor extends GridPane {
    private static final String GIVES = " = ";
    private static final int TRUNK = 0;
    private static final int SOUND = 1;
    private static final int BRANCH = 2;
    private static final int WRONG = 3;

    /** Under this width, in text sizes, there is no room for two workings side by side. */
    private static final double ROOM_FOR_TWO = 26;

    private final Comparison comparison;
    private final String wrongTitle;
    private final Label ruler = new Label();
    private boolean narrow;

    /**
     * The sound working, beside a wrong one where the comparison holds one.
     *
     * @param wrongTitle heads the second column: "What gives 0.526 V"
     */
    public Conductor(final Comparison comparison, final String wrongTitle) {
        this.comparison = comparison;
        this.wrongTitle = wrongTitle;
        getStyleClass().add(Styles.WORKING);
        ruler.setVisible(false);
        ruler.setManaged(false);
        draw();
        if (comparison.partsAt().isPresent()) {
            widthProperty().subscribe(any -> measure());
            ruler.fontProperty().subscribe(any -> measure());
        }
    }

    private void measure() {
        final boolean now = getWidth() > 0 && getWidth() < ROOM_FOR_TWO * ruler.getFont().getSize();
        if (now != narrow) {
            narrow = now;
            draw();
        }
    }

    private void draw() {
        getChildren().setAll(ruler);
        getColumnConstraints().setAll(new ColumnConstraints(), wide());
        if (comparison.partsAt().isEmpty()) {
            alone(0);
        } else if (narrow) {
            add(head(PartsTexts.of("sound-working")), SOUND, 0);
            final int below = alone(1);
            add(head(wrongTitle), SOUND, below);
            branch(TRUNK, below + 1);
        } else {
            getColumnConstraints().addAll(new ColumnConstraints(), wide());
            add(head(PartsTexts.of("sound-working")), SOUND, 0);
            add(head(wrongTitle), WRONG, 0);
            alone(1);
            branch(BRANCH, 1);
        }
    }

    /** The sound working from a row of the grid on; the row after it. */
    private int alone(final int from) {
        int row = from;
        for (final Comparison.Row each : comparison.rows()) {
            add(rail(), TRUNK, row);
            add(sound(each), SOUND, row++);
        }
        return row;
    }

    /** The wrong working from where it parts. */
    private void branch(final int column, final int from) {
        int row = from;
        boolean parted = false;
        for (final Comparison.Row each : comparison.rows()) {
            final String parting = PartsTexts.of(parted ? "part-again" : "part");
            parted |= each.parts();
            if (parted) {
                add(dashes(), column, row);
                add(wrong(each, parting), column + 1, row);
            }
            row++;
        }
    }

    /** The wide columns share what room there is; their text wraps. */
    private static ColumnConstraints wide() {
        final ColumnConstraints column = new ColumnConstraints();
        column.setMinWidth(0);
        column.setPrefWidth(1);
        column.setHgrow(Priority.ALWAYS);
        return column;
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
            parts.add(Texts.soft(Texts.kept(numbers)));
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
    private static TextFlow numbers(final String told) {
        final String numbers = Texts.kept(told);
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

    private static Node dashes() {
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
