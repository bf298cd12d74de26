package wireworthy.window;

import javafx.scene.Node;
import javafx.scene.Parent;
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

    /** Shows something that fills the whole window, in place of strip and place. */
    void cover(Parent whole);

    /** Shows strip and place again. */
    void uncover();

    /** Makes the window fill the screen, or takes it back. */
    void fullScreen();

    /** Shows everything in another language from now on. */
    default void speak(final Language language) {}

    /** Where longer work is done. */
    Background background();
}
