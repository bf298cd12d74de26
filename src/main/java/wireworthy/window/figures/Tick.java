package wireworthy.window.figures;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/**
 * Something that is so or not, to be ticked.
 *
 * @param label what is so: "a second fuse"
 */
record Tick(String label, BooleanProperty on) {
    static Tick of(final String label, final boolean on) {
        return new Tick(label, new SimpleBooleanProperty(on));
    }
}
