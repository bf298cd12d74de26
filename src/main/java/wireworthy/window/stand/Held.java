package wireworthy.window.stand;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wireworthy.record.HeldDay;
import wireworthy.rules.Skill;

/**
 * How many skills held at the end of a day with answers: those that were snug or tight when they
 * were last answered. Time alone also has them come due; no answer tells on which day.
 *
 * @param day counted from 1 January 1970
 */
public record Held(long day, int skills) {
    /**
     * One for each day.
     *
     * @param days oldest first
     */
    static List<Held> of(final List<HeldDay> days) {
        final Set<Skill> holding = EnumSet.noneOf(Skill.class);
        final List<Held> all = new ArrayList<>();
        for (final HeldDay now : days) {
            holding.addAll(now.held());
            holding.removeAll(now.others());
            all.add(new Held(now.day(), holding.size()));
        }
        return all;
    }
}
