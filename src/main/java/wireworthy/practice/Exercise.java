package wireworthy.practice;

import java.util.Optional;
import wireworthy.rules.Skill;
import wireworthy.working.Worked;

/** Something to be done by a learner, its numbers drawn. */
public sealed interface Exercise permits Problem, ChoiceProblem, OrderProblem, SlipHunt {
    Template template();

    /** With bank, version and template it gives the same exercise everywhere. */
    long seed();

    /** The situation, its figures filled in. */
    String text();

    /** The question, its figures filled in. */
    String ask();

    /** The circuit worked behind it; empty where nothing is worked. */
    Optional<Worked> circuit();

    /** How often numbers were drawn until they were fit. */
    int draws();

    /** The skill it is chosen for. */
    default Skill skill() {
        return template().skill();
    }

    /** What the drawn circuit shows as its load. */
    default Drawing drawing() {
        return template().drawing();
    }
}
