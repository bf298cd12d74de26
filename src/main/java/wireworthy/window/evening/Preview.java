package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.evening.Asked;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Exercise;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;
import wireworthy.window.QuestionHead;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The problems of the first learner, one at a time, each with its answer. */
final class Preview extends VBox {
    private List<Exercise> problems = List.of();
    private int at;

    Preview() {
        getStyleClass().add(Styles.EVENING_FORM);
    }

    void show(final List<Exercise> now) {
        final boolean same = problems.equals(now);
        problems = now;
        at = same ? at : 0;
        if (!same) {
            redraw();
        }
    }

    private void redraw() {
        final List<Node> parts = new ArrayList<>();
        if (!problems.isEmpty()) {
            final Exercise exercise = problems.get(at);
            parts.add(
                    Texts.subtitle(
                            EveningTexts.of("preview", "number", at + 1, "of", problems.size())));
            parts.add(
                    new QuestionHead(
                            exercise, exercise.skill().words(), EveningTexts.of("preview.first")));
            asked(exercise).forEach(each -> parts.add(Texts.paragraph(Texts.kept(each))));
            parts.add(Texts.soft(Texts.kept(EveningTexts.of("preview.key", "key", key(exercise)))));
            parts.add(Buttons.row(turn("preview.back", -1), turn("preview.next", 1)));
        }
        getChildren().setAll(parts);
    }

    private static String key(final Exercise exercise) {
        return Asked.of(exercise).stream().map(Asked::right).collect(Collectors.joining(", "));
    }

    /** What the head of the question does not say. */
    private static List<String> asked(final Exercise exercise) {
        if (exercise instanceof ChoiceProblem choice) {
            return lettered(choice.options().stream().map(ChoiceProblem.Option::text).toList());
        }
        if (exercise instanceof OrderProblem order) {
            return lettered(
                    order.shown().stream().map(place -> order.stages().get(place).text()).toList());
        }
        return exercise instanceof Problem problem && problem.parts().size() > 1
                ? problem.parts().stream().map(Problem.Part::ask).toList()
                : List.of();
    }

    private static List<String> lettered(final List<String> texts) {
        final List<String> all = new ArrayList<>();
        for (final String text : texts) {
            all.add(
                    EveningTexts.of(
                            "preview.letter", "letter", Asked.letter(all.size()), "text", text));
        }
        return all;
    }

    private Button turn(final String key, final int by) {
        final Button button =
                Buttons.plain(
                        EveningTexts.of(key),
                        () -> {
                            at += by;
                            redraw();
                        });
        button.setDisable(at + by < 0 || at + by >= problems.size());
        return button;
    }
}
