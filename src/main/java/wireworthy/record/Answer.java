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
 * @param day the day it was where the learner was, counted from 1 January 1970
 * @param person code name
 * @param bank id, with version, template and seed telling the problem
 * @param skill exercised by the answered line
 * @param difficulty -1, 0 or 1
 * @param asked the answered quantity; empty where one of a few was chosen or steps were ordered
 * @param typed as typed
 * @param understood how it was read
 * @param sound right in itself or after the learner's own earlier lines; empty where it could not
 *     be read or had two meanings
 * @param aided given after some help with the same problem
 * @param slips what explains it: alternatives, each one id or a pair
 * @param suspected pairs of slips that fit it, until another problem shows one again
 * @param seconds spent on it
 */
public record Answer(
        Instant at,
        long day,
        String person,
        String bank,
        int version,
        String template,
        long seed,
        Skill skill,
        int difficulty,
        Optional<Quantity> asked,
        String typed,
        String understood,
        Optional<Boolean> sound,
        boolean aided,
        List<List<String>> slips,
        List<List<String>> suspected,
        double seconds) {
    public Answer {
        slips = slips.stream().map(List::copyOf).toList();
        suspected = suspected.stream().map(List::copyOf).toList();
    }
}
