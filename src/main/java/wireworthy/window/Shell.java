package wireworthy.window;

import javafx.scene.Node;
import wireworthy.texts.Language;

/** What the window offers to its places. */
public interface Shell {
    /**
     * Goes to another place.
     *
     * @throws IllegalArgumentException if no place has this id
     */
    void go(String placeId);

    /** Shows a card over the window until it is closed with Esc. */
    void lay(Node card);

    /** Closes the card that lies over the window, if there is one. */
    void lift();

    /** Shows everything in another language from now on. */
    default void speak(final Language language) {}

    /** Where longer work is done. */
    Background background();
}
