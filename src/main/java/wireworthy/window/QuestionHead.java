package wireworthy.window;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.practice.CircuitLabels;
import wireworthy.practice.Drawing;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.practice.SlipHunt;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.CircuitDrawing;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The situation, the question and the drawing of an exercise. */
public final class QuestionHead extends VBox {
    private final Exercise exercise;
    private final CircuitLabels labels;

    /**
     * @param skillState how firmly its skill holds
     * @param why it was chosen
     */
    public QuestionHead(final Exercise exercise, final String skillState, final String why) {
        this.exercise = exercise;
        this.labels = CircuitLabels.of(exercise);
        getStyleClass().add(Styles.TIGHT);
        final Label heading = new Label(skillState + supply());
        heading.getStyleClass().addAll(Styles.COPPER_TEXT, Styles.STRONG, Styles.SMALL);
        heading.setWrapText(true);
        final Label reason = Texts.soft(why);
        reason.getStyleClass().add(Styles.SMALL);
        getChildren().setAll(heading, reason);
        if (exercise.template().foreign()) {
            getChildren().add(Texts.soft(PracticeTexts.of("foreign")));
        }
        getChildren().add(Texts.paragraph(shown(exercise.text())));
        addAsk();
        if (exercise.drawing() != Drawing.NONE) {
            getChildren().add(Cards.card(drawing()));
        }
    }

    /** The parts of a whole circuit say themselves what they ask. */
    private void addAsk() {
        if (exercise instanceof SlipHunt) {
            getChildren().add(Texts.paragraph(shown(exercise.ask())));
            getChildren().add(Texts.strong(PracticeTexts.of("hunt.ask")));
        } else if (!(exercise instanceof Problem problem && problem.parts().size() > 1)) {
            getChildren().add(Texts.strong(shown(exercise.ask())));
        }
    }

    private static String shown(final String text) {
        return Texts.kept(Pretty.units(text));
    }

    private String supply() {
        return labels.supply().isEmpty() ? "" : " · " + labels.supply();
    }

    private CircuitDrawing drawing() {
        return new CircuitDrawing(
                CircuitDrawing.Load.valueOf(exercise.drawing().name()),
                new CircuitDrawing.Labels(
                        labels.supply(),
                        labels.cable(),
                        labels.length(),
                        labels.taken(),
                        labels.beside()));
    }
}
