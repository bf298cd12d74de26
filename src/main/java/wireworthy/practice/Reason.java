package wireworthy.practice;

import java.util.List;
import java.util.Locale;
import wireworthy.rules.Skill;
import wireworthy.texts.TextBundle;

/** Why a problem comes next. */
public enum Reason {
    /** The last one went wrong. */
    TWIN,
    /** The last one was worked with help. */
    TWIN_HELPED,
    /** The last one was right at last. */
    TWIN_TRIED,
    /** A new skill comes twice running. */
    OPENING_PAIR,
    /** One in six. */
    WHOLE_JOB,
    /** A skill that held is due. */
    REVIEW,
    /** A skill that held is likely to go wrong now. */
    SLACK,
    /** The skill before is stuck, and stands on this one. */
    BELOW,
    /** A skill never tried before. */
    NEW,
    /** A skill that does not hold yet. */
    LOOSE,
    /** What was asked longest ago, where nothing is open or due. */
    KEEP,
    /** What would have come was passed by. */
    INSTEAD,
    /** The sitting should end on a right answer. */
    CLOSING,
    /** The last one was likely to go wrong, and so is what is open. */
    EASIER,
    /** One in eight, with a slip in it. */
    HUNT,
    /** One in eight, of a skill at which a slip was made lately. */
    OWN_HUNT,
    /** The learner asked for one more like it. */
    ANOTHER,
    /** The learner chose the skill. */
    CHOSEN;

    private static final TextBundle TEXTS = new TextBundle("choosing");

    /**
     * Why a problem like the last one comes next.
     *
     * @param running the answers to the last problem, the newest first; not all right and unaided
     */
    static Reason twin(final List<Answered> running) {
        if (!running.get(0).right()) {
            return TWIN;
        }
        return running.stream().allMatch(Answered::right) ? TWIN_HELPED : TWIN_TRIED;
    }

    /** In one line, for the learner. */
    String text(final Template template, final Skill skill) {
        return TEXTS.of(key(template), "skill", skill.words());
    }

    /** Where there are no numbers to change, only the order of what is shown is another. */
    private String key(final Template template) {
        final boolean same = !template.hasNumbers();
        return switch (this) {
            case TWIN -> same ? "twin-same" : "twin";
            default -> name().toLowerCase(Locale.ROOT).replace('_', '-');
        };
    }
}
