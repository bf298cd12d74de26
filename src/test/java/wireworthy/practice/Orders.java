package wireworthy.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import wireworthy.rules.Skill;

/** An order in which the skills are asked on thirty days. */
interface Orders {
    /** How many problems it has. */
    int STREAM = 30 * SimulatedLearner.A_DAY;

    /** How many skills are asked in turn. */
    int WINDOW = 4;

    /** Of the next problem. */
    Skill next(SimulatedLearner learner);

    /** Any skill at any time. */
    static Orders mixed() {
        return learner -> draw(learner, SimulatedLearner.SKILLS.size(), 0);
    }

    /**
     * Four skills an evening, drawn by lot, two problems of each. Learning.md does not name the
     * order of its streams. Of its figures for the truths (.94 and .82) and three right in a row
     * (.78 and .68) this order gives .94, .825, .78 and .69, any order .94, .82, .775 and .68: they
     * do not settle which it was, so no target counts as reached by this order alone.
     */
    static Orders evenings() {
        final List<Skill> evening = new ArrayList<>();
        return learner -> {
            if (learner.problems() % SimulatedLearner.A_DAY == 0) {
                final List<Skill> all = new ArrayList<>(SimulatedLearner.SKILLS);
                shuffle(all, learner.random);
                evening.clear();
                evening.addAll(all.subList(0, WINDOW));
                evening.addAll(all.subList(0, WINDOW));
                shuffle(evening, learner.random);
            }
            return evening.get(learner.problems() % SimulatedLearner.A_DAY);
        };
    }

    private static void shuffle(final List<Skill> skills, final RandomGenerator random) {
        for (int i = skills.size(); i > 1; i--) {
            Collections.swap(skills, i - 1, random.nextInt(i));
        }
    }

    /** Four skills at a time in their order, two fifths of earlier ones. */
    static Orders inOrder() {
        return learner -> {
            final int most = SimulatedLearner.SKILLS.size() - WINDOW + 1;
            final int opened = learner.problems() * most / STREAM;
            return opened > 0 && learner.random.nextInt(100) < 40
                    ? draw(learner, opened, 0)
                    : draw(learner, WINDOW, opened);
        };
    }

    private static Skill draw(final SimulatedLearner learner, final int of, final int from) {
        return SimulatedLearner.SKILLS.get(from + learner.random.nextInt(of));
    }
}
