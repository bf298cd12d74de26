package wireworthy.rules;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import wireworthy.facts.Source;

/**
 * A rule read in one direction: from some quantities to one other.
 *
 * @param rule id of the rule
 * @param skill the one skill this line exercises
 * @param output what it gives
 * @param formula the sum in words
 * @param arithmetic the sum in SI
 * @param reading how freely the search may use it
 * @param cost how dear a line is to the search; dearer roads lose
 * @param holds the settings in which it holds
 * @param source the published source of its table or limit
 * @param refusal why the sum gives nothing, where it can
 * @param slips how people get it wrong, in the order of the catalogue
 */
public record Direction(
        String rule,
        Skill skill,
        Ref output,
        Formula formula,
        Arithmetic arithmetic,
        Reading reading,
        double cost,
        Predicate<Setting> holds,
        Function<Setting, Optional<Source>> source,
        Optional<Refusal.Why> refusal,
        List<Slip> slips) {

    /** How a direction may be used. */
    public enum Reading {
        /** A relation among quantities; also tells givens that contradict each other. */
        RELATION,
        /** The way a rule is meant; a limit, a table, a rounding, a default among its inputs. */
        FORWARD,
        /** Turned round: never from a value that was assumed. */
        BACKWARD,
        /** Says that two names stand for one value here; no line of its own in the telling. */
        CARRIED
    }

    /** The same direction for one load of a list. */
    public Direction forLoad(final int load) {
        return new Direction(
                rule,
                skill,
                output.quantity().ofLoad() ? new Ref(output.quantity(), load) : output,
                formula.forLoad(load),
                arithmetic,
                reading,
                cost,
                holds,
                source,
                refusal,
                slips.stream().map(slip -> slip.forLoad(load)).toList());
    }

    /** Whether it speaks of one load's own quantities. */
    public boolean ofLoad() {
        return output.quantity().ofLoad()
                || formula.inputs().stream().anyMatch(input -> input.quantity().ofLoad());
    }
}
