package wireworthy.practice;

import java.util.Locale;
import wireworthy.texts.TextBundle;

/** How firmly a skill holds, as one would say of a screw terminal. */
public enum SkillState {
    UNTRIED,
    LOOSE,
    SNUG,
    TIGHT,
    /** It holds as far as is known; the day has come to ask it again. */
    DUE,
    WORKED_LOOSE;

    private static final TextBundle TEXTS = new TextBundle("states");

    /** Whether it held once and is to be asked again. */
    public boolean comesBack() {
        return this == DUE || this == WORKED_LOOSE;
    }

    /** For people. */
    public String words() {
        return TEXTS.of(name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
