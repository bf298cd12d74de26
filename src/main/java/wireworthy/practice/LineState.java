package wireworthy.practice;

import java.util.Locale;

/** What becomes of a line when a working is opened line by line. */
public enum LineState {
    /** Worked for the learner. */
    SHOWN,
    /** Left for the learner to work. */
    ASKED,
    /** Put away, because it holds; can be unfolded and worked. */
    FOLDED;

    private static final double SHOWN_BELOW = 0.40;
    private static final double FOLDED_ABOVE = 0.85;
    private static final int RUNNING = 3;

    /**
     * By how firmly the skill of the line holds (fading fitted to the learner: Salden et al. 2010).
     *
     * @param answers how many the skill has had; a first contact is a worked line
     * @param chance that an unaided answer would be right
     * @param running how many of the last answers in a row were right unaided
     */
    static LineState of(final int answers, final double chance, final int running) {
        if (answers == 0 || chance < SHOWN_BELOW) {
            return SHOWN;
        }
        return chance > FOLDED_ABOVE && running >= RUNNING ? FOLDED : ASKED;
    }

    /** For people: "shown", "yours", "folded". */
    public String words() {
        return LineTexts.of("state." + name().toLowerCase(Locale.ROOT));
    }
}
