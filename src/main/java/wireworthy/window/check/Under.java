package wireworthy.window.check;

import javafx.scene.control.Label;
import wireworthy.window.parts.Icon;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The line under a field: what was understood, or what is the matter, with its sign. */
final class Under extends Label {
    Under() {
        getStyleClass().addAll(Styles.SOFT, Styles.SMALL, Styles.UNDER);
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
    }

    /**
     * Says it.
     *
     * @param troubled whether it is to be seen to; then it has a sign and not only a colour
     */
    void say(final String text, final boolean troubled) {
        setText(Texts.kept(text));
        getStyleClass().remove(Styles.UNSOUND);
        setGraphic(null);
        if (troubled) {
            getStyleClass().add(Styles.UNSOUND);
            setGraphic(Icon.CROSS.node());
        }
    }
}
