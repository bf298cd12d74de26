package wireworthy.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the answers of one skill left behind: counts that decay with a half-life of ten days, a
 * correction, the tracing, and when it is due again.
 *
 * @param right decayed count of answers right unaided, on the last day
 * @param wrong decayed count of the others
 * @param correction what this skill differs from the learner's ability
 * @param answers how many there were
 * @param lastDay of the last answer
 * @param known by knowledge tracing
 * @param lastFour newest last
 * @param templates those answered right unaided
 * @param days those with an answer right unaided
 * @param firm SNUG or TIGHT once reached, LOOSE before
 * @param reviews how many reviews were passed in turn
 * @param due the day from which it is to be asked again, once it held
 */
record Memory(
        double right,
        double wrong,
        double correction,
        int answers,
        long lastDay,
        double known,
        List<Boolean> lastFour,
        Set<String> templates,
        Set<Long> days,
        SkillState firm,
        int reviews,
        long due) {
    static final Memory NONE =
            new Memory(
                    0,
                    0,
                    0,
                    0,
                    0,
                    Tracing.START,
                    List.of(),
                    Set.of(),
                    Set.of(),
                    SkillState.UNTRIED,
                    0,
                    Long.MAX_VALUE);

    private static final double HALF_LIFE = 10;
    private static final int[] GAPS = {1, 3, 7, 16, 35, 60};
    private static final double SNUG = 0.85;
    private static final double FELL = 0.75;
    private static final double TIGHT = 0.95;

    Memory {
        lastFour = List.copyOf(lastFour);
        templates = Set.copyOf(templates);
        days = Set.copyOf(days);
    }

    private double kept(final long day) {
        return Math.pow(2, -(day - lastDay) / HALF_LIFE);
    }

    /** How likely an answer on a day is right unaided. */
    double chance(final double ability, final long day, final int difficulty) {
        final double z =
                -0.9
                        + ability
                        + correction
                        + 1.1 * Math.log1p(right * kept(day))
                        + 0.15 * Math.log1p(wrong * kept(day))
                        - 0.5 * difficulty;
        return 1 / (1 + Math.exp(-z));
    }

    /** With one more answer, whose chance was off by so much; the state is taken over. */
    Memory with(final Answered answer, final double error) {
        final boolean good = answer.rightUnaided();
        final double kept = kept(answer.day());
        final List<Boolean> last = new ArrayList<>(lastFour);
        last.add(good);
        return new Memory(
                right * kept + (good ? 1 : 0),
                wrong * kept + (good ? 0 : 1),
                correction + 0.5 / (1 + 0.1 * answers) * error,
                answers + 1,
                answer.day(),
                Tracing.after(known, good),
                last.subList(Math.max(0, last.size() - 4), last.size()),
                good ? with(templates, answer.template()) : templates,
                good ? with(days, answer.day()) : days,
                firm,
                reviews,
                due);
    }

    private static <T> Set<T> with(final Set<T> set, final T more) {
        final Set<T> all = new HashSet<>(set);
        all.add(more);
        return all;
    }

    /** With the state that this last answer leaves it in. */
    Memory settled(final double ability, final Memory before) {
        final SkillState now = firmer(chance(ability, lastDay, 0));
        if (now == SkillState.LOOSE) {
            return settled(now, 0, Long.MAX_VALUE);
        }
        final boolean good = lastFour.get(lastFour.size() - 1);
        if (before.due == Long.MAX_VALUE) {
            return settled(now, 0, lastDay + GAPS[0]);
        }
        if (!good) {
            final int back = Math.max(0, reviews - 1);
            return settled(now, back, lastDay + GAPS[back]);
        }
        if (lastDay < before.due) {
            return settled(now, reviews, before.due);
        }
        final int next = Math.min(reviews + 1, GAPS.length - 1);
        return settled(now, next, lastDay + GAPS[next]);
    }

    /** A skill that once held stays so; time and errors show as worked loose. */
    private SkillState firmer(final double chance) {
        final long right = lastFour.stream().filter(each -> each).count();
        final boolean snug = chance >= SNUG && right >= 3;
        if (snug && known >= TIGHT && templates.size() >= 2 && days.size() >= 2) {
            return SkillState.TIGHT;
        }
        final boolean held = firm == SkillState.SNUG || firm == SkillState.TIGHT;
        return held ? firm : snug ? SkillState.SNUG : SkillState.LOOSE;
    }

    private Memory settled(final SkillState now, final int passed, final long next) {
        return new Memory(
                right,
                wrong,
                correction,
                answers,
                lastDay,
                known,
                lastFour,
                templates,
                days,
                now,
                passed,
                next);
    }

    /** How firmly it holds on a day. */
    SkillState state(final double ability, final long day) {
        final boolean held = firm == SkillState.SNUG || firm == SkillState.TIGHT;
        return held && (day >= due || chance(ability, day, 0) < FELL)
                ? SkillState.WORKED_LOOSE
                : firm;
    }
}
