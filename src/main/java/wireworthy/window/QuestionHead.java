package wireworthy.window;

import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.practice.Drawing;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.practice.SlipHunt;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.CircuitDrawing;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.working.Worked;

/** The situation, the question and the drawing of an exercise. */
final class QuestionHead extends VBox {
    private static final Quantity[] LOAD_LABELS = {
        Quantity.LOAD_POWER, Quantity.LOAD_CURRENT, Quantity.CIRCUIT_CURRENT, Quantity.RESISTANCE
    };

    private final Exercise exercise;

    /**
     * @param skillState how firmly its skill holds
     * @param why it was chosen
     */
    QuestionHead(final Exercise exercise, final String skillState, final String why) {
        this.exercise = exercise;
        getStyleClass().add(Styles.TIGHT);
        final Label heading = new Label(skillState + figure(Quantity.SUPPLY_VOLTAGE, " · "));
        heading.getStyleClass().addAll(Styles.COPPER_TEXT, Styles.STRONG, Styles.SMALL);
        heading.setWrapText(true);
        final Label reason = Texts.soft(why);
        reason.getStyleClass().add(Styles.SMALL);
        getChildren().setAll(heading, reason, Texts.paragraph(Texts.kept(exercise.text())));
        addAsk();
        if (exercise.drawing() != Drawing.NONE) {
            getChildren().add(Cards.card(drawing()));
        }
    }

    /** The parts of a whole circuit say themselves what they ask. */
    private void addAsk() {
        if (exercise instanceof SlipHunt) {
            getChildren().add(Texts.paragraph(exercise.ask()));
            getChildren().add(Texts.strong(PracticeTexts.of("hunt.ask")));
        } else if (!(exercise instanceof Problem problem && problem.parts().size() > 1)) {
            getChildren().add(Texts.strong(exercise.ask()));
        }
    }

    private CircuitDrawing drawing() {
        final String load =
                Stream.of(LOAD_LABELS)
                        .map(quantity -> figure(quantity, ""))
                        .filter(text -> !text.isEmpty())
                        .findFirst()
                        .orElse("");
        return new CircuitDrawing(
                CircuitDrawing.Load.valueOf(exercise.drawing().name()),
                new CircuitDrawing.Labels(
                        figure(Quantity.SUPPLY_VOLTAGE, ""),
                        figure(Quantity.SECTION, ""),
                        figure(Quantity.ONE_WAY_LENGTH, ""),
                        load));
    }

    /** A given with something before it; empty where it is not given. */
    private String figure(final Quantity quantity, final String before) {
        final Optional<Worked> worked = exercise.circuit();
        return worked.flatMap(circuit -> circuit.typed(Ref.circuit(quantity)))
                .map(read -> before + read.inItsOwnUnit())
                .orElse("");
    }
}
