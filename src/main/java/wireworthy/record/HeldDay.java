package wireworthy.record;

import java.util.Set;
import wireworthy.rules.Skill;

/**
 * What was answered on a day, and how it held at its end.
 *
 * @param day counted from 1 January 1970
 * @param held those that were snug or tight
 * @param others that were answered and were not
 */
public record HeldDay(long day, Set<Skill> held, Set<Skill> others) {
    public HeldDay {
        held = Set.copyOf(held);
        others = Set.copyOf(others);
    }
}
