package wireworthy.window;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.practice.Exercise;
import wireworthy.practice.Prerequisites;
import wireworthy.practice.Problem;
import wireworthy.practice.SkillState;
import wireworthy.practice.SlipHunt;
import wireworthy.record.Answer;
import wireworthy.rules.Skill;
import wireworthy.window.stand.SkillStand;
import wireworthy.window.stand.Stand;

/**
 * A problem that came.
 *
 * @param why the line that says so
 * @param before where the learner stood then
 * @param answers those before it, oldest first
 */
record Came(String why, Exercise exercise, Stand before, List<Answer> answers, Instant at) {
    private static final Duration LONG_ENOUGH = Duration.ofMinutes(17);
    private static final Duration PAUSE = Duration.ofMinutes(30);
    private static final int WEEK = 7;

    /** The next problem of a model. */
    static Came next(
            final PracticeModel model,
            final Stand before,
            final OwnRecord record,
            final Instant at) {
        final List<Answer> answers = record.lately();
        model.next();
        return new Came(model.why().get(), model.exercise().orElseThrow(), before, answers, at);
    }

    boolean isReview() {
        return why.startsWith("Due again");
    }

    private Skill skill() {
        return exercise.skill();
    }

    private SkillStand stand() {
        return before.of(skill());
    }

    /** Whether the line says what is so by what was on record. */
    boolean isTrue() {
        final String reason = why.split("[:,;]", 2)[0];
        final boolean named = !why.contains(": ") || names();
        return named
                && switch (reason) {
                    case "New" -> stand().tries() == 0;
                    case "Still new" -> stand().tries() == 1 && last().skill() == skill();
                    case "Still loose" -> stand().state() == SkillState.LOOSE;
                    case "Due again" -> isDue();
                    case "Worked loose" -> isSlack();
                    case "The last one went wrong" -> isLike() && !allRight();
                    case "The last one was worked with help" -> isLike() && last().aided();
                    case "The last one took more than one try" -> isLike() && tries() > 1;
                    case "One with a slip in it" -> isHunt();
                    case "A whole job" -> exercise instanceof Problem p && p.parts().size() > 1;
                    case "First what it stands on" -> isBelow();
                    case "After a hard one" -> last().skill() != skill();
                    case "Long enough for one sitting" -> lasted().compareTo(LONG_ENOUGH) >= 0;
                    case "Nothing else is open now" -> isLongestAgo();
                    default -> false;
                };
    }

    private boolean names() {
        return why.contains(": " + skill().words())
                || why.startsWith("The last one ")
                || why.startsWith("A whole job");
    }

    private Answer last() {
        return answers.get(answers.size() - 1);
    }

    private static boolean right(final Answer answer) {
        return answer.sound().orElse(false);
    }

    /** Of the same template as the last one, with other numbers. */
    private boolean isLike() {
        return last().template().equals(exercise.template().id())
                && last().seed() != exercise.seed();
    }

    private boolean allRight() {
        return toTheLast().allMatch(Came::right);
    }

    private long tries() {
        return toTheLast().count();
    }

    /** The answers to the last problem. */
    private Stream<Answer> toTheLast() {
        return answers.stream()
                .filter(it -> it.seed() == last().seed())
                .filter(it -> it.template().equals(last().template()));
    }

    private boolean isDue() {
        return stand().state() == SkillState.DUE
                && stand().due().orElse(Long.MAX_VALUE) <= before.today();
    }

    private boolean isSlack() {
        return stand().state() == SkillState.WORKED_LOOSE;
    }

    private boolean isHunt() {
        final boolean own = why.contains("because you slipped lately");
        return exercise instanceof SlipHunt && (!own || slipped());
    }

    private boolean slipped() {
        return answers.stream()
                .filter(it -> it.day() > before.today() - WEEK)
                .flatMap(it -> it.slips().stream())
                .flatMap(List::stream)
                .anyMatch(((SlipHunt) exercise).slip().ids()::contains);
    }

    private boolean isBelow() {
        final Skill stuck = last().skill();
        return Prerequisites.of(stuck).contains(skill()) && before.of(stuck).stuck();
    }

    private boolean isLongestAgo() {
        return stand().tries() > 0 && !stand().state().comesBack() && last().skill() != skill();
    }

    private Duration lasted() {
        Instant from = at;
        for (int i = answers.size() - 1; i >= 0; i--) {
            final Answer answer = answers.get(i);
            if (Duration.between(answer.at(), from).compareTo(PAUSE) > 0) {
                break;
            }
            from = answer.at();
        }
        return Duration.between(from, at);
    }

    @Override
    public String toString() {
        return Optional.of(stand()).map(it -> before.today() + " " + why + " " + it).orElseThrow()
                + " "
                + exercise.getClass().getSimpleName()
                + " "
                + exercise.template().id()
                + (answers.isEmpty() ? "" : " after " + last());
    }
}
