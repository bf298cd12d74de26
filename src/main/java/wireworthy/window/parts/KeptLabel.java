package wireworthy.window.parts;

import javafx.scene.control.Label;

/** A text that is broken into lines only where it, or its width, has changed. */
public class KeptLabel extends Label {
    private final KeptHeights heights = new KeptHeights();
    private final boolean made;

    public KeptLabel(final String text) {
        super(text);
        made = true;
    }

    /** What is in it has changed; the toolkit asks for it while this is being made, too. */
    @Override
    public void requestLayout() {
        if (made) {
            heights.forget();
        }
        super.requestLayout();
    }

    /** A text is never cut: its least height is not worked beside the preferred. */
    @Override
    protected double computeMinHeight(final double width) {
        return prefHeight(width);
    }

    @Override
    protected double computePrefHeight(final double width) {
        return heights.preferred(width, super::computePrefHeight);
    }

    @Override
    protected double computeMaxHeight(final double width) {
        return heights.most(width, super::computeMaxHeight);
    }
}
