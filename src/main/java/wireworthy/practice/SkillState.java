package wireworthy.practice;

/** How firmly a skill holds, as one would say of a screw terminal. */
public enum SkillState {
    UNTRIED("untried"),
    LOOSE("loose"),
    SNUG("snug"),
    TIGHT("tight"),
    WORKED_LOOSE("worked loose");

    private final String words;

    SkillState(final String words) {
        this.words = words;
    }

    /** For people. */
    public String words() {
        return words;
    }
}
