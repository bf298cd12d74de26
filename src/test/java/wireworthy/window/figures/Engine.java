package wireworthy.window.figures;

import org.assertj.core.data.Offset;
import tools.jackson.databind.json.JsonMapper;
import wireworthy.rules.Quantity;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;

/** What a plain question gives, to hold the figures against. */
final class Engine {
    private static final JsonMapper JSON = new JsonMapper();

    private Engine() {}

    /** Moves the knobs of a figure to these stops, in the order shown. */
    static void move(final FigureModel<?> model, final int... stops) {
        for (int i = 0; i < stops.length; i++) {
            model.knobs().get(i).stop().set(stops[i]);
        }
    }

    /** What the engine answers; NaN where nothing fits. */
    static double asked(final Quantity quantity, final String given) {
        return BuiltInFigures.SOLVER
                .work(question(quantity, given))
                .value(quantity)
                .orElse(Double.NaN);
    }

    static Question question(final Quantity quantity, final String given) {
        return QuestionReader.read(
                JSON.readTree(
                        "{\"given\": {%s}, \"find\": \"%s\"}".formatted(given, quantity.id())));
    }

    static Offset<Double> near() {
        return Offset.offset(1e-9);
    }
}
