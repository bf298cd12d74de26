package wireworthy.window.parts;

import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import org.jspecify.annotations.Nullable;

/** A text of a set width that is as high as its lines, whatever it stands in. */
public final class FixedText extends Label {
    /**
     * @param width in text sizes
     */
    public FixedText(final String text, final double width) {
        super(text);
        setWrapText(true);
        setStyle("-fx-pref-width: " + width + "em;");
        setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    }

    /** The height follows from the set width alone. */
    @Override
    public @Nullable Orientation getContentBias() {
        return null;
    }

    @Override
    protected double computePrefHeight(final double width) {
        return super.computePrefHeight(prefWidth(-1));
    }
}
