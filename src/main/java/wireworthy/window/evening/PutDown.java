package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wireworthy.evening.Asked;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.OrderProblem;
import wireworthy.window.ChoiceModel;
import wireworthy.window.ExerciseModel;
import wireworthy.window.FigureModel;
import wireworthy.window.OrderModel;
import wireworthy.window.PartsModel;

/** Answers as a hand-in has them, read from an exercise being done and put back into it. */
final class PutDown {
    private PutDown() {}

    /** A text for each answer asked for; empty where there is none yet. */
    static List<String> of(final ExerciseModel model) {
        if (model instanceof FigureModel figure) {
            return List.of(figure.lines().answer().left());
        }
        if (model instanceof PartsModel parts) {
            return figures(parts);
        }
        if (model instanceof ChoiceModel choice) {
            return List.of(letter(choice));
        }
        return List.of(letters((OrderModel) model));
    }

    private static List<String> figures(final PartsModel parts) {
        final List<String> figures = new ArrayList<>();
        parts.opened().forEach(part -> figures.add(part.lines().answer().left()));
        while (figures.size() < parts.exercise().parts().size()) {
            figures.add("");
        }
        return figures;
    }

    private static String letter(final ChoiceModel choice) {
        return choice.chosen()
                .get()
                .map(it -> Asked.letter(choice.exercise().options().indexOf(it)))
                .orElse("");
    }

    /** The letters under which the steps were first shown, in the order in which they stand now. */
    private static String letters(final OrderModel order) {
        final OrderProblem problem = order.exercise();
        return order.order().stream()
                .map(step -> Asked.letter(problem.shown().indexOf(step)))
                .collect(Collectors.joining(" "));
    }

    /** Puts answers back, unmarked: an option picked, steps in their order. */
    static void back(final ExerciseModel model, final List<String> typed) {
        if (typed.isEmpty() || typed.get(0).isEmpty()) {
            return;
        }
        if (model instanceof FigureModel figure) {
            figure.typed().set(typed.get(0));
        } else if (model instanceof ChoiceModel choice) {
            choice.chosen().set(option(choice.exercise(), typed.get(0)));
        } else if (model instanceof OrderModel order) {
            order(order, typed.get(0));
        }
    }

    private static Optional<ChoiceProblem.Option> option(
            final ChoiceProblem problem, final String letter) {
        return problem.options().stream()
                .filter(it -> Asked.letter(problem.options().indexOf(it)).equals(letter))
                .findFirst();
    }

    private static void order(final OrderModel model, final String typed) {
        final List<Integer> shown = model.exercise().shown();
        final List<Integer> wanted =
                Arrays.stream(typed.toUpperCase(Locale.ROOT).split("[^A-Z]+"))
                        .filter(it -> it.length() == 1 && it.charAt(0) - 'A' < shown.size())
                        .map(it -> shown.get(it.charAt(0) - 'A'))
                        .toList();
        for (int place = 0; place < wanted.size(); place++) {
            int row = model.order().indexOf(wanted.get(place));
            while (row > place) {
                row = model.move(row, -1);
            }
        }
    }

    /** Puts answers back and marks them, figure by figure. */
    static void marked(final ExerciseModel model, final List<String> typed) {
        if (model instanceof PartsModel parts) {
            for (int i = 0; i < typed.size() && !typed.get(i).isEmpty(); i++) {
                part(parts, i, typed.get(i));
            }
        } else if (typed.stream().anyMatch(it -> !it.isEmpty())) {
            back(model, typed);
            model.answer();
        }
    }

    private static void part(final PartsModel parts, final int number, final String typed) {
        parts.current().typed().set(typed);
        parts.answer();
        if (parts.opened().size() == number + 1) {
            parts.goOn();
        }
    }
}
