package wireworthy.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/**
 * One answer to one line or problem.
 *
 * @param at when, kept to the millisecond
 * @param person code name
 * @param bank id, with version, template and seed telling the problem
 * @param skill exercised by the answered line
 * @param difficulty -1, 0 or 1
 * @param asked the answered quantity
 * @param typed as typed
 * @param understood how it was read
 * @param sound empty where it could not be read or had two meanings
 * @param aided given after some help with the same problem
 * @param slips what explains it: alternatives, each one id or a pair
 * @param seconds spent on it
 */
public record Answer(
        Instant at,
        String person,
        String bank,
        int version,
        String template,
        long seed,
        Skill skill,
        int difficulty,
        Quantity asked,
        String typed,
        String understood,
        Optional<Boolean> sound,
        boolean aided,
        List<List<String>> slips,
        double seconds) {
    public Answer {
        slips = slips.stream().map(List::copyOf).toList();
    }
}
