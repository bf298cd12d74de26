package wireworthy.evening.wish;

import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;

/**
 * The sheet a leader wants.
 *
 * @param seed which of the sheets that could be made of it, below {@link SheetPlan#SEEDS}
 */
public record Wish(Wanted wanted, ForWhom who, Handout handout, int seed) {
    public static final Wish USUAL = new Wish(Wanted.USUAL, ForWhom.USUAL, Handout.USUAL, 1);

    public Wish withWanted(final Wanted now) {
        return new Wish(now, who, handout, seed);
    }

    public Wish withWho(final ForWhom now) {
        return new Wish(wanted, now, handout, seed);
    }

    public Wish withHandout(final Handout now) {
        return new Wish(wanted, who, now, seed);
    }

    public Wish withSeed(final int now) {
        return new Wish(wanted, who, handout, now);
    }

    /** Wants the sheet of a plan; the code names stay where there are as many. */
    public Wish like(final SheetPlan plan) {
        return new Wish(
                Wanted.of(plan.pick(), plan.ownBanks()),
                new ForWhom(
                        who.named() && who.fits(plan.learners()),
                        who.names(),
                        plan.learners(),
                        plan.ownNumbers()),
                handout,
                plan.seed());
    }

    /**
     * The sheet.
     *
     * @throws wireworthy.evening.EveningProblem where it can't be made
     */
    public Sheet sheet(final Shelf shelf) {
        return Sheet.of(
                new SheetPlan(
                        wanted.pick(),
                        who.ownNumbers(),
                        who.learners().size(),
                        wanted.ownBanks(),
                        seed),
                shelf);
    }
}
