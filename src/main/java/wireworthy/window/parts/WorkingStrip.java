package wireworthy.window.parts;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import wireworthy.working.Assumed;
import wireworthy.working.Line;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** A working as a conductor: its lines are joints along a copper line. */
public final class WorkingStrip extends VBox {
    private static final String GIVES = " = ";

    public WorkingStrip(final Worked worked) {
        getStyleClass().add(Styles.WORKING_STRIP);
        Telling.lines(worked).forEach(line -> getChildren().add(joint(line)));
        Assumed.of(worked)
                .forEach(each -> getChildren().add(Texts.soft("Assumed: " + each.text())));
    }

    private static HBox joint(final Line line) {
        final VBox said = new VBox(said(line));
        said.getStyleClass().add(Styles.WORKING_LINE);
        HBox.setHgrow(said, Priority.ALWAYS);
        return new HBox(rail(), said);
    }

    /** A piece of the copper line with its joint. */
    static Node rail() {
        final Region joint = new Region();
        joint.getStyleClass().add(Styles.WORKING_JOINT);
        final StackPane rail = new StackPane(joint);
        rail.getStyleClass().add(Styles.WORKING_RAIL);
        return rail;
    }

    private static Node[] said(final Line line) {
        final Stream<Node> sum = Stream.of(small(line.formula()), numbers(line.numbers()));
        final Stream<Node> besides =
                Stream.of(line.source().map(from -> "From " + from.text()).orElse(""), line.note())
                        .filter(text -> !text.isEmpty())
                        .map(WorkingStrip::small);
        return Stream.concat(sum, besides).toArray(Node[]::new);
    }

    static Label small(final String text) {
        final Label label = Texts.soft(text);
        label.getStyleClass().add(Styles.SMALL);
        return label;
    }

    /** The sum plain, what comes of it strong. */
    static TextFlow numbers(final String numbers) {
        final String kept = Texts.kept(numbers);
        final int end = kept.lastIndexOf(GIVES);
        final int result = end < 0 ? 0 : end + GIVES.length();
        return new TextFlow(
                text(kept.substring(0, result), Styles.PROSE_TEXT),
                text(kept.substring(result), Styles.PROSE_TEXT, Styles.STRONG));
    }

    private static Text text(final String words, final String... styles) {
        final Text text = new Text(words);
        text.getStyleClass().addAll(List.of(styles));
        return text;
    }
}
