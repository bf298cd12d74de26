package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import java.util.Optional;
import java.util.Set;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.texts.TextBundle;
import wireworthy.working.Danger;
import wireworthy.working.Worked;

/** What acting on a wrong value would lead to, from the side on which it errs. */
record Dangers(Danger danger, String key) {
    private static final TextBundle TEXTS = new TextBundle("dangers");

    /** Before what tells the answer. */
    private static final String BAR = "|";

    private static final Set<Quantity> CURRENTS =
            Set.of(LOAD_CURRENT, SUPPLY_CURRENT, CIRCUIT_CURRENT, START_CURRENT, CURRENT);
    private static final Set<Quantity> NEEDS = Set.of(AMPACITY_NEEDED, Quantity.LOAD_POWER);
    private static final Set<Quantity> SECTIONS =
            Set.of(SECTION_FOR_DROP, SECTION_FOR_AMPACITY, STANDARD_SECTION);
    private static final Set<Quantity> CEILINGS =
            Set.of(AMPACITY, TABLE_AMPACITY, FUSE_CEILING, AMBIENT_FACTOR, BUNDLE_FACTOR);
    private static final Set<Quantity> DROPS =
            Set.of(DROP, DROP_PERCENT, LOOP_RESISTANCE, LOOP_LENGTH, RESISTANCE_PER_LENGTH);

    private static final Set<Quantity> LASTING =
            Set.of(RUNTIME, USABLE_ENERGY, BANK_ENERGY, BANK_CAPACITY);

    /**
     * The danger of a value too high or too low. Fire is not said where the cable and the fuse that
     * are given, or the section that carries the current, rule it out.
     */
    static Optional<Dangers> of(
            final Worked worked, final Quantity quantity, final double value, final double right) {
        final Chosen chosen = new Chosen(worked);
        final boolean low = value < right;
        if (quantity == FUSE || quantity == MAIN_FUSE) {
            return fuse(value, right, chosen.ceiling());
        }
        if (CURRENTS.contains(quantity)) {
            return low ? tooLittle(chosen) : costs();
        }
        if (SECTIONS.contains(quantity)) {
            return low ? section(value, chosen) : costs();
        }
        if (NEEDS.contains(quantity)) {
            return low ? unless(chosen.cableCarries(), fire("section-too-small")) : costs();
        }
        if (CEILINGS.contains(quantity)) {
            return low ? costs() : unless(chosen.fuseProtects(), fire("ceiling-too-high"));
        }
        if (quantity == FUSE_FLOOR) {
            return low
                    ? wont("fuse-opens")
                    : unless(chosen.protectedFrom(value), fire("floor-too-high"));
        }
        if (quantity == SECTION) {
            return low ? costs() : fire("section-overrated");
        }
        if (DROPS.contains(quantity)) {
            return low
                    ? unless(chosen.dropHolds(), wont("drop-too-low"))
                    : unless(worked.typed(Ref.circuit(SECTION)).isPresent(), costs());
        }
        if (quantity == VOLTAGE_AT_LOAD) {
            return low ? Optional.empty() : wont("volts-too-high");
        }
        if (quantity == LONGEST_RUN) {
            return low ? costs() : wont("volts-too-high");
        }
        return LASTING.contains(quantity) && !low ? wont("runtime-too-long") : Optional.empty();
    }

    private static Optional<Dangers> unless(
            final boolean ruledOut, final Optional<Dangers> danger) {
        return ruledOut ? Optional.empty() : danger;
    }

    /** A cable that is given and thick enough is not chosen by the current any more. */
    private static Optional<Dangers> tooLittle(final Chosen chosen) {
        return chosen.cableCarries()
                ? unless(chosen.fuseGiven(), wont("fuse-opens"))
                : fire("current-too-low");
    }

    /** A section that carries the current, but too thin for the run, loses volts and no more. */
    private static Optional<Dangers> section(final double value, final Chosen chosen) {
        return chosen.carries(value) ? wont("section-loses-volts") : fire("section-too-small");
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
