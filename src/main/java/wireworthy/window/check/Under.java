package wireworthy.window.check;

import wireworthy.window.parts.Icon;
import wireworthy.window.parts.KeptLabel;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The line under a field: what was understood, or what is the matter, with its sign. */
final class Under extends KeptLabel {
    private Said said = Said.NOTHING;

    Under() {
        super("");
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
        if (said.equals(new Said(text, troubled))) {
            return;
        }
        said = new Said(text, troubled);
        setText(Texts.kept(text));
        getStyleClass().remove(Styles.UNSOUND);
        setGraphic(null);
        if (troubled) {
            getStyleClass().add(Styles.UNSOUND);
            setGraphic(Icon.CROSS.node());
        }
    }
}
