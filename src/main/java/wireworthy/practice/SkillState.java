package wireworthy.practice;

import java.util.Locale;
import wireworthy.texts.TextBundle;

/** How firmly a skill holds, as one would say of a screw terminal. */
public enum SkillState {
    UNTRIED,
    LOOSE,
    SNUG,
    TIGHT,
    WORKED_LOOSE;

    private static final TextBundle TEXTS = new TextBundle("states");

    /** For people. */
    public String words() {
        return TEXTS.of(name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
