package wireworthy.practice;

import java.util.List;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Question;
import wireworthy.working.Worked;

/**
 * A template with its numbers drawn.
 *
 * @param seed with bank, version and template it gives the same problem everywhere
 * @param asked what has to be answered
 * @param text the situation, its figures filled in
 * @param ask the question, its figures filled in
 * @param draws how often numbers were drawn until all slips stood apart
 * @param clashes which slips can't be told apart even so, for the author of the bank
 */
public record Problem(
        Template template,
        long seed,
        Question question,
        Worked worked,
        Ref asked,
        String text,
        String ask,
        int draws,
        List<String> clashes) {
    public Problem {
        clashes = List.copyOf(clashes);
    }

    /** Whether every slip can be told from the right answer and from every other. */
    public boolean apart() {
        return clashes.isEmpty();
    }

    /** The skill it is chosen for. */
    public Skill skill() {
        return template.skill();
    }

    /** What the drawn circuit shows as its load. */
    public Drawing drawing() {
        return template.drawing();
    }

    /** The asked quantity. */
    public Quantity find() {
        return template.find();
    }
}
