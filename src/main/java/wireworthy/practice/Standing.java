package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a learner stands after all answers so far; the next one changes it in no time, however many
 * there were.
 *
 * @param skills how firmly they hold
 * @param sitting the one of the last answer
 * @param lately the last answers, newest last
 */
public record Standing(Skills skills, Sitting sitting, List<Answered> lately) {
    /** Before the first answer. */
    public static final Standing NONE = new Standing(Skills.NONE, Sitting.NONE, List.of());

    private static final int LATELY = 60;

    public Standing {
        lately = List.copyOf(lately);
    }

    /** After all answers of a learner, oldest first. */
    public static Standing of(final List<Answered> answered) {
        Standing standing = NONE;
        for (final Answered each : answered) {
            standing = standing.with(each);
        }
        return standing;
    }

    /** After one more answer. */
    public Standing with(final Answered answer) {
        final boolean more = last().filter(answer::ofSameProblem).isEmpty();
        final boolean twin = last().filter(answer::ofSameTemplate).isPresent();
        final boolean review = !twin && skills.state(answer.skill(), answer.day()).comesBack();
        final List<Answered> last =
                new ArrayList<>(
                        lately.subList(Math.max(0, lately.size() + 1 - LATELY), lately.size()));
        last.add(answer);
        return new Standing(skills.with(answer), sitting.with(answer, more, review), last);
    }

    /** The last answer of all. */
    Optional<Answered> last() {
        return lately.isEmpty() ? Optional.empty() : Optional.of(lately.get(lately.size() - 1));
    }

    /**
     * Today's answers to the last template, back to another one: two problems once there was a
     * twin.
     */
    List<Answered> lastOfOneTemplate(final long day) {
        final List<Answered> running = new ArrayList<>();
        for (int i = lately.size() - 1; i >= 0; i--) {
            final Answered each = lately.get(i);
            if (each.day() < day
                    || !each.template().equals(lately.get(lately.size() - 1).template())) {
                break;
            }
            running.add(each);
        }
        return running;
    }

    /** How often a template was answered lately. */
    long asked(final Template template) {
        return lately.stream().filter(a -> a.template().equals(template.fullId())).count();
    }

    /** Which of the last answers was the latest to a template, from 0; -1 where none was. */
    int lastAsked(final Template template) {
        int last = lately.size() - 1;
        while (last >= 0 && !lately.get(last).template().equals(template.fullId())) {
            last--;
        }
        return last;
    }
}
