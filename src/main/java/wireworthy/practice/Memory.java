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
 * @param templates those answered right unaided, no more than two
 * @param days those with an answer right unaided, no more than two
 * @param firm SNUG or TIGHT once reached, LOOSE before
 * @param since the day on which it became so firm; the largest long before
 * @param reviews how many reviews were passed in turn
 * @param due the day from which it is to be asked again, once it held
 * @param vain tries since three ran right, or since it was left for another day
 * @param slippedOn the last day on which a known slip was made; the smallest long before
 */
public record Memory(
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
        long since,
        int reviews,
        long due,
        int vain,
        long slippedOn) {
    /** Of a skill that was never tried. */
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
                    Long.MAX_VALUE,
                    0,
                    Long.MAX_VALUE,
                    0,
                    Long.MIN_VALUE);

    private static final double HALF_LIFE = 10;
    private static final int[] GAPS = {1, 3, 7, 16, 35, 60};
    private static final double SNUG = 0.85;
    private static final double FELL = 0.75;
    private static final double TIGHT = 0.95;
    private static final int SEVERAL = 2;
    private static final int IN_VAIN = 8;
    private static final int RUNNING = 3;

    public Memory {
        lastFour = List.copyOf(lastFour);
        templates = Set.copyOf(templates);
        days = Set.copyOf(days);
    }

    /** What decay leaves of a count; a clock that was set back undoes none of it. */
    private double kept(final long day) {
        return Math.pow(2, -Math.max(0, day - lastDay) / HALF_LIFE);
    }

    /**
     * The log-odds that an answer on a day is right unaided: performance factors (Pavlik, Cen and
     * Koedinger 2009, from memory, unconfirmed) whose counts decay.
     */
    double logOdds(final double ability, final long day, final int difficulty) {
        return -0.9
                + ability
                + correction
                + 1.1 * Math.log1p(right * kept(day))
                + 0.15 * Math.log1p(wrong * kept(day))
                - 0.5 * difficulty;
    }

    /** With one more answer, whose chance was off by so much; the state is taken over. */
    Memory with(final Answered answer, final double error) {
        final boolean good = answer.rightUnaided();
        final double kept = kept(answer.day());
        final List<Boolean> last = lastFour(good);
        return new Memory(
                right * kept + (good ? 1 : 0),
                wrong * kept + (good ? 0 : 1),
                correction + 0.5 / (1 + 0.1 * answers) * error,
                answers + 1,
                Math.max(lastDay, answer.day()),
                Tracing.after(known, good),
                last,
                good ? with(templates, answer.template()) : templates,
                good ? with(days, answer.day()) : days,
                firm,
                since,
                reviews,
                due,
                running(last) >= RUNNING ? 0 : vainBefore(answer.day()) + 1,
                answer.slipped() ? answer.day() : slippedOn);
    }

    private List<Boolean> lastFour(final boolean newest) {
        final List<Boolean> last = new ArrayList<>(lastFour);
        last.add(newest);
        return last.subList(Math.max(0, last.size() - 4), last.size());
    }

    private static int running(final List<Boolean> last) {
        return last.size() - 1 - last.lastIndexOf(false);
    }

    private boolean lastRight() {
        return running() > 0;
    }

    /** How many of the last four in a row were right unaided. */
    int running() {
        return running(lastFour);
    }

    /** What was left for another day begins afresh on that day. */
    private int vainBefore(final long day) {
        return inVain() && day > lastDay ? 0 : vain;
    }

    /** A wrong try that leaves no room for three right running within eight. */
    private boolean inVain() {
        return vain > IN_VAIN - RUNNING + 1 && running() == 0;
    }

    /** Whether it is left for another day. */
    boolean stuck(final long day) {
        return inVain() && day <= lastDay;
    }

    private static <T> Set<T> with(final Set<T> set, final T more) {
        if (set.size() >= SEVERAL || set.contains(more)) {
            return set;
        }
        final Set<T> all = new HashSet<>(set);
        all.add(more);
        return all;
    }

    /** With the state that this last answer leaves it in, from the chance of the next one. */
    Memory settled(final double chance, final Memory before) {
        final SkillState now = firmer(chance);
        if (now == SkillState.LOOSE) {
            return settled(now, 0, Long.MAX_VALUE);
        }
        if (before.due == Long.MAX_VALUE) {
            return settled(now, 0, lastDay + GAPS[0]);
        }
        if (!lastRight()) {
            final int back = Math.max(0, reviews - 1);
            return settled(now, back, lastDay + GAPS[back]);
        }
        if (lastDay < before.due) {
            return settled(now, reviews, before.due);
        }
        final int next = Math.min(reviews + 1, GAPS.length - 1);
        return settled(now, next, lastDay + GAPS[next]);
    }

    private boolean held() {
        return firm == SkillState.SNUG || firm == SkillState.TIGHT;
    }

    /** A skill that once held stays so; time shows as due, errors as worked loose. */
    private SkillState firmer(final double chance) {
        final long right = lastFour.stream().filter(each -> each).count();
        final boolean snug = chance >= SNUG && right >= 3;
        final boolean tight =
                snug && known >= TIGHT && templates.size() >= SEVERAL && days.size() >= SEVERAL;
        if (tight && (lastRight() || firm == SkillState.TIGHT)) {
            return SkillState.TIGHT;
        }
        return held() || (snug && lastRight()) ? SkillState.SNUG : SkillState.LOOSE;
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
                since(now),
                passed,
                next,
                vain,
                slippedOn);
    }

    private long since(final SkillState now) {
        if (now == SkillState.LOOSE) {
            return Long.MAX_VALUE;
        }
        return now.compareTo(firm) > 0 ? lastDay : since;
    }

    /**
     * How firmly it holds on a day, from the chance of an answer on it. What held and then went
     * wrong has worked loose until it is right again without help.
     */
    SkillState state(final double chance, final long day) {
        if (held() && (chance < FELL || !lastRight())) {
            return SkillState.WORKED_LOOSE;
        }
        if (held() && day >= due) {
            return SkillState.DUE;
        }
        return firm == SkillState.TIGHT && chance < SNUG ? SkillState.SNUG : firm;
    }
}
