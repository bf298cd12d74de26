package wireworthy.window.check;

import javafx.scene.control.Control;
import javafx.scene.control.Label;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/**
 * A label, what is typed or chosen under it, and a line under both. In a row of them, all stand on
 * the lower edge of what is typed, however many lines a label takes.
 */
abstract class EntryBox extends KeptBox {
    private final Label label;
    private final Control control;

    EntryBox(final Label label, final Control control, final Under under) {
        super(label, control, under);
        this.label = label;
        this.control = control;
        getStyleClass().add(Styles.ENTRY);
    }

    /** How far it reaches to the lower edge of what is typed. */
    double above(final double width) {
        return label.prefHeight(width) + getSpacing() + control.prefHeight(-1);
    }
}
