package wireworthy.record;

import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wireworthy.practice.Answered;
import wireworthy.practice.Moment;

/** Turns the answers on record into what the skills are folded from. */
public final class AnsweredFrom {
    private AnsweredFrom() {}

    /**
     * The first readable answer to each line of each problem; a second try at the same numbers says
     * nothing new about the skill.
     *
     * @param zone in which a day begins and ends
     */
    public static List<Answered> of(final List<Answer> answers, final ZoneId zone) {
        final Set<List<Object>> seen = new HashSet<>();
        return answers.stream()
                .filter(answer -> answer.sound().isPresent())
                .filter(answer -> seen.add(line(answer)))
                .map(answer -> answered(answer, zone))
                .toList();
    }

    private static List<Object> line(final Answer answer) {
        return List.of(
                answer.person(),
                answer.bank(),
                answer.version(),
                answer.template(),
                answer.seed(),
                answer.asked());
    }

    private static Answered answered(final Answer answer, final ZoneId zone) {
        return new Answered(
                answer.skill(),
                Moment.of(answer.at(), zone),
                answer.sound().orElse(false),
                answer.aided(),
                !answer.slips().isEmpty(),
                answer.difficulty(),
                answer.bank() + "/" + answer.template(),
                answer.seed());
    }
}
