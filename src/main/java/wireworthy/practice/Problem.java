package wireworthy.practice;

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
 * @param closeness what comes too near to what even so
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
        Closeness closeness) {
    /** Whether every slip stands apart from the right answer and from every other. */
    public boolean apart() {
        return closeness.none();
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
