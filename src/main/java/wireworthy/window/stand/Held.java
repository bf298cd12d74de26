package wireworthy.window.stand;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wireworthy.practice.SkillState;
import wireworthy.record.SkillDay;
import wireworthy.rules.Skill;

/**
 * How many skills held at the end of a day with answers: those that were snug or tight when they
 * were last answered. Time alone also works them loose; no answer tells on which day.
 *
 * @param day counted from 1 January 1970
 */
public record Held(long day, int skills) {
    /**
     * One for each day.
     *
     * @param days oldest first
     */
    static List<Held> of(final List<SkillDay> days) {
        final Set<Skill> holding = EnumSet.noneOf(Skill.class);
        final List<Held> all = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            final SkillDay now = days.get(i);
            if (now.state() == SkillState.SNUG || now.state() == SkillState.TIGHT) {
                holding.add(now.skill());
            } else {
                holding.remove(now.skill());
            }
            if (i == days.size() - 1 || days.get(i + 1).day() > now.day()) {
                all.add(new Held(now.day(), holding.size()));
            }
        }
        return all;
    }
}
