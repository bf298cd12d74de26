package wireworthy.window;

import java.util.Locale;
import java.util.Random;
import wireworthy.marking.SlipFigures;
import wireworthy.practice.Problem;
import wireworthy.practice.SlipHunt;
import wireworthy.rules.Ref;

/** Someone at work on what Practice shows. */
enum Practising {
    /** Most is right. */
    SURE(0.9, 0.03),
    /** Four in five, help now and then. */
    USUAL(0.78, 0.1),
    /** As often wrong as right. */
    UNSURE(0.55, 0.1);

    private static final double WRONG = 1.37;
    private static final double TRIED_AGAIN = 0.3;

    private static final long SEED = Long.getLong("week.seed", 7);

    private final double right;
    private final double helped;

    Practising(final double right, final double helped) {
        this.right = right;
        this.helped = helped;
    }

    /**
     * Does the exercise that is shown: right, with help, or by a known slip and then perhaps again.
     *
     * @param number of the exercise; the same one is always done in the same way
     */
    void does(final PracticeModel model, final int number) {
        final Random lots = new Random(31L * number + name().hashCode() + SEED);
        final ExerciseModel exercise = model.doing().get().orElseThrow();
        if (lots.nextDouble() < helped) {
            exercise.figure().ifPresent(FigureModel::showRule);
        }
        final boolean sound = lots.nextDouble() < right;
        answer(exercise, sound);
        if (!sound && lots.nextDouble() < TRIED_AGAIN) {
            answer(exercise, true);
        }
    }

    static void answer(final ExerciseModel exercise, final boolean right) {
        if (exercise instanceof FigureModel figure) {
            figure(figure, right);
        } else if (exercise instanceof PartsModel parts) {
            parts(parts, right);
        } else if (exercise instanceof ChoiceModel choice) {
            choice.chosen()
                    .set(
                            choice.exercise().options().stream()
                                    .filter(o -> o.right() == right)
                                    .findFirst());
            choice.answer();
        } else if (exercise instanceof OrderModel order) {
            order(order, right);
        } else if (exercise instanceof HuntModel hunt) {
            hunt(hunt, right);
        }
    }

    private static void figure(final FigureModel figure, final boolean right) {
        figure.typed().set(right ? sound(figure.exercise()) : slipped(figure.exercise()));
        figure.answer();
    }

    /** All figures of a whole job; only the first is wrong where one is to be. */
    private static void parts(final PartsModel parts, final boolean right) {
        boolean now = right;
        for (int left = parts.exercise().parts().size(); left > 0; left--) {
            figure(parts.current(), now);
            if (!now) {
                parts.goOn();
            }
            now = true;
        }
    }

    private static void order(final OrderModel order, final boolean right) {
        for (int place = 0; place < order.order().size(); place++) {
            for (int row = order.order().indexOf(place); row > place; row--) {
                order.move(row, -1);
            }
        }
        if (!right) {
            order.move(0, 1);
        }
        order.answer();
    }

    private static void hunt(final HuntModel hunt, final boolean right) {
        final SlipHunt exercise = hunt.exercise();
        final int row = right ? exercise.wrong() : (exercise.wrong() + 1) % exercise.rows().size();
        hunt.pick(row);
        hunt.figure(row).text().set(sound(exercise.problem(), exercise.rows().get(row).ref()));
        hunt.answer();
    }

    private static String sound(final Problem problem) {
        return sound(problem, problem.asked());
    }

    private static String sound(final Problem problem, final Ref ref) {
        return written(problem.worked().value(ref).orElseThrow());
    }

    private static String slipped(final Problem problem) {
        return SlipFigures.of(problem.worked(), problem.asked()).stream()
                .map(it -> it.value())
                .filter(
                        value ->
                                Math.abs(
                                                value
                                                                / problem.worked()
                                                                        .value(problem.asked())
                                                                        .orElseThrow()
                                                        - 1)
                                        > 0.05)
                .findFirst()
                .map(Practising::written)
                .orElseGet(
                        () ->
                                written(
                                        problem.worked().value(problem.asked()).orElseThrow()
                                                * WRONG));
    }

    private static String written(final double figure) {
        return String.format(Locale.ROOT, "%.6g", figure);
    }
}
