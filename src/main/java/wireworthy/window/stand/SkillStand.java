package wireworthy.window.stand;

import java.util.List;
import java.util.OptionalLong;
import wireworthy.practice.SkillState;
import wireworthy.rules.Skill;

/**
 * How one skill stands on a day. Days are counted from 1 January 1970.
 *
 * @param tries how many answers count for it
 * @param last the day of the last of them; empty before the first
 * @param since the day on which it became as firm as it is or was; empty before
 * @param due the day from which it is asked again; empty while it does not hold
 * @param stuck whether it is left for another day
 * @param again slips made more than once lately, the most frequent first
 */
public record SkillStand(
        Skill skill,
        SkillState state,
        int tries,
        OptionalLong last,
        OptionalLong since,
        OptionalLong due,
        boolean stuck,
        List<SlipAgain> again) {
    public SkillStand {
        again = List.copyOf(again);
    }

    /** Whether it is snug or tight. */
    public boolean holds() {
        return state == SkillState.SNUG || state == SkillState.TIGHT;
    }
}
