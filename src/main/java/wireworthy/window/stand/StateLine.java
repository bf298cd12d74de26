package wireworthy.window.stand;

import javafx.scene.control.Label;
import wireworthy.practice.SkillState;
import wireworthy.window.parts.Icon;
import wireworthy.window.parts.Styles;

/** How firmly a skill holds: a screw head as the sign, and the word. */
final class StateLine extends Label {
    StateLine(final SkillState state) {
        super(state.words(), sign(state).node());
        getStyleClass().add(Styles.STATE);
        setMinWidth(USE_PREF_SIZE);
    }

    private static Icon sign(final SkillState state) {
        return switch (state) {
            case UNTRIED -> Icon.NO_SCREW;
            case LOOSE -> Icon.SCREW_LOOSE;
            case SNUG -> Icon.SCREW_SNUG;
            case TIGHT -> Icon.SCREW_TIGHT;
            case DUE -> Icon.SCREW_DUE;
            case WORKED_LOOSE -> Icon.SCREW_WORKED_LOOSE;
        };
    }
}
