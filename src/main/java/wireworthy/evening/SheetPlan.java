package wireworthy.evening;

import wireworthy.practice.SplitMix;

/**
 * All that a sheet is made from, beside the banks.
 *
 * @param ownNumbers whether each learner has numbers of their own
 * @param learners how many copies, 1 to {@value #MOST_LEARNERS}
 * @param ownBanks whether the leader's own banks are among those it is made from
 * @param seed which of the sheets that could be made of the same pick, below {@value #SEEDS}
 */
public record SheetPlan(Pick pick, boolean ownNumbers, int learners, boolean ownBanks, int seed) {
    public static final int MOST_LEARNERS = 64;

    /** So many different sheets can be made of one pick. */
    public static final int SEEDS = 1 << 16;

    private static final int NUMBERS = 1_000_000;

    public SheetPlan {
        if (learners < 1 || learners > MOST_LEARNERS) {
            throw EveningProblem.of("plan.copies", "copies", learners, "most", MOST_LEARNERS);
        }
        if (seed < 0 || seed >= SEEDS) {
            throw EveningProblem.of("plan.number", "number", seed, "most", SEEDS - 1);
        }
    }

    /** The same with other numbers in it. */
    public SheetPlan withSeed(final int other) {
        return new SheetPlan(pick, ownNumbers, learners, ownBanks, other);
    }

    /** What decides the lots of a sheet. */
    SplitMix lots() {
        return SplitMix.of("sheet/" + seed);
    }

    /** The seed of a learner's problem; both count from 1. */
    long numbers(final int learner, final int problem) {
        final int whose = ownNumbers ? learner : 0;
        return 1L + SplitMix.of("sheet/" + seed + "/" + whose + "/" + problem).below(NUMBERS);
    }
}
