package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import java.util.Optional;
import java.util.Set;
import wireworthy.rules.Quantity;
import wireworthy.texts.TextBundle;
import wireworthy.working.Danger;

/** What acting on a wrong value would lead to, from the side on which it errs. */
record Dangers(Danger danger, String key) {
    private static final TextBundle TEXTS = new TextBundle("dangers");

    /** Before what tells the answer. */
    private static final String BAR = "|";

    private static final Set<Quantity> CURRENTS =
            Set.of(LOAD_CURRENT, SUPPLY_CURRENT, CIRCUIT_CURRENT, START_CURRENT, CURRENT);
    private static final Set<Quantity> NEEDS =
            Set.of(
                    AMPACITY_NEEDED,
                    SECTION_FOR_DROP,
                    SECTION_FOR_AMPACITY,
                    STANDARD_SECTION,
                    Quantity.LOAD_POWER);
    private static final Set<Quantity> CEILINGS =
            Set.of(AMPACITY, TABLE_AMPACITY, FUSE_CEILING, AMBIENT_FACTOR, BUNDLE_FACTOR);
    private static final Set<Quantity> DROPS =
            Set.of(DROP, DROP_PERCENT, LOOP_RESISTANCE, LOOP_LENGTH, RESISTANCE_PER_LENGTH);

    private static final Set<Quantity> LASTING =
            Set.of(RUNTIME, USABLE_ENERGY, BANK_ENERGY, BANK_CAPACITY);

    /**
     * The danger of a value too high or too low.
     *
     * @param ceiling the most the cable carries, A; NaN where no cable is known
     */
    static Optional<Dangers> of(
            final Quantity quantity, final double value, final double right, final double ceiling) {
        final boolean low = value < right;
        if (quantity == FUSE || quantity == MAIN_FUSE) {
            return fuse(value, right, ceiling);
        }
        if (CURRENTS.contains(quantity)) {
            return low ? fire("current-too-low") : costs();
        }
        if (NEEDS.contains(quantity)) {
            return low ? fire("section-too-small") : costs();
        }
        if (CEILINGS.contains(quantity)) {
            return low ? costs() : fire("ceiling-too-high");
        }
        if (quantity == FUSE_FLOOR) {
            return low ? wont("fuse-opens") : fire("floor-too-high");
        }
        if (quantity == SECTION) {
            return low ? costs() : fire("section-overrated");
        }
        if (DROPS.contains(quantity)) {
            return low ? wont("drop-too-low") : costs();
        }
        if (quantity == VOLTAGE_AT_LOAD) {
            return low ? Optional.empty() : wont("volts-too-high");
        }
        if (quantity == LONGEST_RUN) {
            return low ? costs() : wont("volts-too-high");
        }
        return LASTING.contains(quantity) && !low ? wont("runtime-too-long") : Optional.empty();
    }

    private static Optional<Dangers> fuse(
            final double value, final double right, final double ceiling) {
        if (value > ceiling || (Double.isNaN(ceiling) && value > right)) {
            return fire("fuse-above-cable");
        }
        return wont("fuse-opens");
    }

    private static Optional<Dangers> fire(final String key) {
        return Optional.of(new Dangers(Danger.FIRE, "fire." + key));
    }

    private static Optional<Dangers> wont(final String key) {
        return Optional.of(new Dangers(Danger.WILL_NOT_WORK, "will-not-work." + key));
    }

    private static Optional<Dangers> costs() {
        return Optional.of(new Dangers(Danger.COSTS_MONEY, "costs-money"));
    }

    /** In a sentence, with places for the learner's figure and the sound one. */
    String told() {
        return TEXTS.of(key).replace(BAR, "");
    }

    /** The same without the sound figure; empty where nothing is left to say. */
    String withoutAnswer() {
        final String text = TEXTS.of(key);
        return text.contains(BAR) ? text.substring(0, text.indexOf(BAR)) + "." : "";
    }
}
