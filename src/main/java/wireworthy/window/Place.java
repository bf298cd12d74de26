package wireworthy.window;

import javafx.scene.Parent;

/** A place of the program: a terminal of the strip along the top, and what is shown when used. */
public interface Place {
    /** A short name that never changes; it is kept in the settings. */
    String id();

    /** What stands on the terminal. */
    String title();

    /** Builds what is shown. Called once, on the first visit. */
    Parent build(Shell shell);

    /** Called each time the place has come into view, after {@link #build}. */
    default void shown() {}

    /** Puts the keyboard where a text is looked for; nothing where there is no such field. */
    default void find() {}

    /** Called when another place comes into view. */
    default void left() {}
}
