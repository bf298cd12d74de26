package wireworthy.practice;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import wireworthy.rules.Skill;

/** Simulated learners at practice, and what comes of it. */
final class LearningTrial {
    private static final double LOW = 0.7;
    private static final int MOST = 1_600;
    private static final int FIRST = 3;
    private static final int TRIES = 8;

    private static final Set<SkillState> FIRM = EnumSet.of(SkillState.SNUG, SkillState.TIGHT);

    private final Function<RandomGenerator, Truth> truth;
    private final long first;
    private final int learners;

    /**
     * @param first number of the first learner, which is the seed of all that happens to them
     */
    LearningTrial(
            final Function<RandomGenerator, Truth> truth, final long first, final int learners) {
        this.truth = truth;
        this.first = first;
        this.learners = learners;
    }

    /** A share of cases. */
    static final class Share {
        private long cases;
        private long such;

        void add(final boolean is) {
            cases++;
            such += is ? 1 : 0;
        }

        double of() {
            return (double) such / cases;
        }
    }

    /**
     * What thirty days of answers show of the model.
     *
     * @param auc of the chances told
     * @param truth AUC of the true chances themselves
     * @param best AUC of the best that can be told from the answers; see {@link Knower}
     * @param three AUC of how many were right running, three at most
     * @param tightThoughLow share of skills told as tight whose true chance is below .7
     */
    record Model(
            double auc,
            double truth,
            double best,
            double three,
            double calibrationError,
            double tightThoughLow) {}

    private LongStream seeds() {
        return LongStream.range(first, first + learners);
    }

    /**
     * Has all learners answer in an order.
     *
     * @param knower who knows this truth
     */
    Model model(final Supplier<Orders> order, final Supplier<Knower> knower) {
        final Scores told = new Scores();
        final Scores real = new Scores();
        final Scores best = new Scores();
        final Scores three = new Scores();
        final Share low = new Share();
        seeds().forEach(
                        seed -> {
                            final SimulatedLearner learner = new SimulatedLearner(seed, truth);
                            final Knower knows = knower.get();
                            final Orders asked = order.get();
                            while (learner.problems() < Orders.STREAM) {
                                final Skill skill = asked.next(learner);
                                final SimulatedLearner.Tried tried = learner.tries(skill);
                                told.add(tried.told(), tried.right());
                                real.add(tried.real(), tried.right());
                                best.add(knows.chance(skill, tried.marked()), tried.right());
                                three.add(tried.running() / 3.0, tried.right());
                                knows.answered(skill, tried.marked(), tried.right());
                                if (learner.problems() % SimulatedLearner.A_DAY == 0) {
                                    knows.night();
                                }
                                tight(learner, low);
                            }
                        });
        return new Model(
                told.auc(), real.auc(), best.auc(), three.auc(), told.calibrationError(), low.of());
    }

    private static void tight(final SimulatedLearner learner, final Share low) {
        // Overnight the truth moves on; it is asked within one day.
        if (learner.problems() % SimulatedLearner.A_DAY == 0) {
            return;
        }
        SimulatedLearner.SKILLS.stream()
                .filter(skill -> learner.state(skill) == SkillState.TIGHT)
                .forEach(skill -> low.add(learner.truth.chance(skill, 0) < LOW));
    }

    /**
     * Problems until each skill was told to hold at some time while its true chance was at least
     * .7; the median over the learners.
     */
    long problemsUntilAllHold(final Function<SimulatedLearner, Choice> next) {
        return seeds().map(seed -> problemsUntilAllHold(new SimulatedLearner(seed, truth), next))
                .sorted()
                .skip(learners / 2)
                .findFirst()
                .orElseThrow();
    }

    private static long problemsUntilAllHold(
            final SimulatedLearner learner, final Function<SimulatedLearner, Choice> next) {
        final Set<Skill> hold = EnumSet.noneOf(Skill.class);
        while (hold.size() < SimulatedLearner.SKILLS.size() && learner.problems() < MOST) {
            final Choice choice = next.apply(learner);
            final Skill skill = choice.template().skill();
            final boolean known = learner.truth.chance(skill, 0) >= LOW;
            learner.answers(choice);
            if (known && FIRM.contains(learner.state(skill))) {
                hold.add(skill);
            }
        }
        return learner.problems();
    }

    /** The share of choices of which something is so, a skill's first three left out. */
    double chosen(final int problems, final Predicate<Chosen> counted, final Predicate<Chosen> so) {
        final Share share = new Share();
        seeds().forEach(
                        seed -> {
                            final SimulatedLearner learner = new SimulatedLearner(seed, truth);
                            while (learner.problems() < problems) {
                                final Chosen chosen = Chosen.of(learner);
                                if (counted.test(chosen)) {
                                    share.add(so.test(chosen));
                                }
                                learner.answers(chosen.choice());
                            }
                        });
        return share.of();
    }

    /**
     * A choice and what the program thought of it.
     *
     * @param tries of the skill before
     * @param sameSkill whether the problem before was of the same skill
     * @param review whether the skill had worked loose
     */
    record Chosen(Choice choice, double chance, int tries, boolean sameSkill, boolean review) {
        static Chosen of(final SimulatedLearner learner) {
            final Choice choice = learner.chosen();
            final Skill skill = choice.template().skill();
            final Skills skills = learner.skills();
            return new Chosen(
                    choice,
                    skills.chance(skill, learner.day(), choice.template().difficulty()),
                    skills.answers(skill),
                    learner.standing().last().filter(a -> a.skill() == skill).isPresent(),
                    skills.state(skill, learner.day()).comesBack());
        }

        /** A twin is given because of the error, whatever its chance. */
        boolean picked() {
            return tries >= FIRST && choice.reason() != Reason.TWIN;
        }

        boolean wellPitched() {
            return chance >= .65 && chance <= .90;
        }
    }

    /**
     * What the stuck rule does by the eighth try.
     *
     * @param caught share of skills that can't be learned that are left for another day
     * @param falseAlarms share of others so left although they are known by then
     * @param left share of others so left at all
     */
    record Stuck(double caught, double falseAlarms, double left) {}

    /** Each learner has one skill that no try ever teaches. */
    static Stuck stuck(final long first, final int learners) {
        final Share caught = new Share();
        final Share known = new Share();
        final Share left = new Share();
        for (long seed = first; seed < first + learners; seed++) {
            final Skill never = SimulatedLearner.SKILLS.get((int) seed % 20);
            final TwoStates[] truth = new TwoStates[1];
            final SimulatedLearner learner =
                    new SimulatedLearner(
                            seed,
                            random -> {
                                truth[0] =
                                        new TwoStates(
                                                random,
                                                EnumSet.copyOf(SimulatedLearner.SKILLS),
                                                EnumSet.of(never),
                                                TwoStates.Shake.NONE);
                                return truth[0];
                            });
            final Set<Skill> judged = EnumSet.noneOf(Skill.class);
            while (learner.problems() < 2 * Orders.STREAM) {
                final Choice choice = learner.chosen();
                final Skill skill = choice.template().skill();
                final boolean knew = truth[0].knows(skill);
                learner.answers(choice);
                final boolean stuck = learner.skills().stuck(skill, learner.lastDay());
                final int tries = learner.skills().answers(skill);
                if ((stuck || tries == TRIES) && tries <= TRIES && judged.add(skill)) {
                    if (skill == never) {
                        caught.add(stuck);
                    } else {
                        known.add(stuck && knew);
                        left.add(stuck);
                    }
                }
            }
        }
        return new Stuck(caught.of(), known.of(), left.of());
    }
}
