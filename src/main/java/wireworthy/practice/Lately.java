package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wireworthy.rules.Skill;

/**
 * What a learner has answered, as far as the choice of the next problem looks back.
 *
 * @param history all answers, oldest first
 * @param day today
 */
record Lately(List<Answered> history, long day) {
    private static final int TRIES = 8;
    private static final int RUNNING = 3;

    /** The last answer of all. */
    Optional<Answered> last() {
        return history.isEmpty() ? Optional.empty() : Optional.of(history.get(history.size() - 1));
    }

    /**
     * Today's answers to the last template, back to another one: two problems once there was a
     * twin.
     */
    List<Answered> lastOfOneTemplate() {
        final List<Answered> running = new ArrayList<>();
        for (int i = history.size() - 1; i >= 0; i--) {
            final Answered each = history.get(i);
            if (each.day() != day
                    || !each.template().equals(history.get(history.size() - 1).template())) {
                break;
            }
            running.add(each);
        }
        return running;
    }

    /** Eight tries today without three right running: left for another day. */
    boolean stuck(final Skill skill) {
        final List<Answered> tries =
                history.stream().filter(a -> a.day() == day && a.skill() == skill).toList();
        int running = 0;
        for (final Answered each : tries) {
            running = each.rightUnaided() ? running + 1 : 0;
            if (running == RUNNING) {
                return false;
            }
        }
        return tries.size() >= TRIES;
    }

    /** How often a template was answered. */
    long asked(final Template template) {
        return history.stream().filter(a -> a.template().equals(template.fullId())).count();
    }
}
