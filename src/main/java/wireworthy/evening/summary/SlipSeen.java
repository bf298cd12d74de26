package wireworthy.evening.summary;

import java.util.List;
import java.util.Set;
import wireworthy.rules.Skill;

/**
 * A slip and who made it.
 *
 * @param id of the catalogue
 * @param words what went wrong, in short
 * @param skills those of what was asked where it was made
 * @param learners who may have made it, by label, each once
 * @param answers how many it may explain
 * @param weight the same, an answer that several slips explain shared among them
 */
public record SlipSeen(
        String id,
        String words,
        Set<Skill> skills,
        List<String> learners,
        int answers,
        double weight) {
    public SlipSeen {
        skills = Set.copyOf(skills);
        learners = List.copyOf(learners);
    }
}
