package wireworthy.window.evening;

import javafx.scene.Parent;
import wireworthy.window.Shell;

/** A part of the evening class, chosen at the side of its place. */
public interface EveningPart {
    /**
     * The key of its title in {@code texts/evening-class.properties}; {@code key.note} is the line
     * under it.
     */
    String key();

    /** Builds what is shown. Called once, when the part is first chosen. */
    Parent build(Shell shell);

    /** Called each time the part has come into view, after {@link #build}. */
    default void shown() {}

    /** Called when another part, or another place, comes into view. */
    default void left() {}
}
