package wireworthy.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.Refusal;
import wireworthy.texts.TextBundle;

/**
 * A question worked: its plan and the value at each place.
 *
 * @param values SI by place of the plan; not to be changed
 * @param missing for each asked quantity that can't be had, what would have to be given besides
 */
public record Worked(
        Question question, Plan plan, double[] values, Map<Quantity, List<Quantity>> missing) {
    private static final TextBundle REFUSALS = new TextBundle("refusals");

    /** SI value of the circuit's own quantity; empty where the plan has none or nothing fits. */
    public OptionalDouble value(final Quantity quantity) {
        return value(Ref.circuit(quantity));
    }

    /** SI value; empty where the plan has none or nothing fits. */
    public OptionalDouble value(final Ref ref) {
        final double value = plan.value(ref, values);
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** What an asked quantity stands for, in the order of the loads. */
    public List<Ref> refs(final Quantity asked) {
        return plan.refsOf(asked);
    }

    /** Why an asked quantity has no value; empty where it has one, or where no rating fits. */
    public Optional<Unworkable> problem(final Quantity asked) {
        final List<Ref> refs = refs(asked);
        if (refs.isEmpty()) {
            return Optional.of(unreached(asked));
        }
        for (final Ref ref : refs) {
            if (value(ref).isEmpty()) {
                return firstRefusal(ref);
            }
        }
        return Optional.empty();
    }

    private Unworkable unreached(final Quantity asked) {
        final List<Quantity> needed = missing.getOrDefault(asked, List.of());
        if (needed.isEmpty()) {
            return new Unworkable(
                    "find", REFUSALS.of("unreached", "quantity", asked.words()) + hint(asked));
        }
        final String list =
                needed.stream().distinct().map(Quantity::id).collect(Collectors.joining(", "));
        return new Unworkable(
                "given." + needed.get(0).id(),
                REFUSALS.of("give-also", "quantity", asked.words(), "list", list) + hint(asked));
    }

    private static String hint(final Quantity asked) {
        return switch (asked) {
            case SECTION -> REFUSALS.of("hint.section");
            case LOAD_CURRENT -> REFUSALS.of("hint.load-current");
            default -> "";
        };
    }

    /** The first line on the way that gave nothing says why. */
    private Optional<Unworkable> firstRefusal(final Ref ref) {
        final List<Step> way = wayTo(ref);
        for (final Step step : way) {
            if (Double.isNaN(values[step.output()])) {
                return step.direction().refusal().map(why -> refused(why, step));
            }
        }
        return Optional.empty();
    }

    private Unworkable refused(final Refusal.Why why, final Step step) {
        final double[] x = new double[step.inputs().length];
        for (int i = 0; i < x.length; i++) {
            x[i] = values[step.inputs()[i]];
        }
        final Refusal refusal = why.of(x, plan.setting());
        return new Unworkable(refusal.where(), refusal.message());
    }

    /** The lines that lead to a value, in working order. */
    public List<Step> wayTo(final Ref ref) {
        final Map<Integer, Step> byOutput = new LinkedHashMap<>();
        plan.steps().forEach(step -> byOutput.put(step.output(), step));
        final List<Step> way = new ArrayList<>();
        plan.placeOf(ref).ifPresent(place -> collect(place, byOutput, way));
        return way;
    }

    private static void collect(
            final int place, final Map<Integer, Step> byOutput, final List<Step> way) {
        final Step step = byOutput.get(place);
        if (step == null || way.contains(step)) {
            return;
        }
        for (final int input : step.inputs()) {
            collect(input, byOutput, way);
        }
        way.add(step);
    }

    /** Refuses values no circuit has, and questions of which nothing can be worked. */
    Worked checked() {
        for (final Step step : plan.steps()) {
            final Ref ref = plan.at(step.output());
            if (values[step.output()] < 0 && Limits.of(ref.quantity()).least() >= 0) {
                throw new Unworkable("given", negative(ref.quantity()));
            }
        }
        for (final Quantity asked : question.find()) {
            if (problem(asked).isEmpty()) {
                return this;
            }
        }
        throw problem(question.find().get(0)).orElseThrow();
    }

    private static String negative(final Quantity quantity) {
        return quantity == Quantity.VOLTAGE_AT_LOAD
                ? REFUSALS.of("more-than-supply")
                : REFUSALS.of("less-than-nothing", "quantity", quantity.words());
    }

    /** How the given or assumed value was typed, if it was. */
    public Optional<Reading.Read> typed(final Ref ref) {
        return Optional.ofNullable(question.figures().get(ref));
    }
}
