package wireworthy.window.parts;

import javafx.scene.control.Label;

/** A text that is broken into lines only where it, or its width, has changed. */
public class KeptLabel extends Label {
    private final KeptHeight least = new KeptHeight();
    private final KeptHeight preferred = new KeptHeight();
    private final KeptHeight most = new KeptHeight();
    private final boolean made;

    public KeptLabel(final String text) {
        super(text);
        made = true;
    }

    /** What is in it has changed; the constructor above asks for it, too. */
    @Override
    public void requestLayout() {
        if (made) {
            least.forget();
            preferred.forget();
            most.forget();
        }
        super.requestLayout();
    }

    @Override
    protected double computeMinHeight(final double width) {
        return least.of(width, super::computeMinHeight);
    }

    @Override
    protected double computePrefHeight(final double width) {
        return preferred.of(width, super::computePrefHeight);
    }

    @Override
    protected double computeMaxHeight(final double width) {
        return most.of(width, super::computeMaxHeight);
    }
}
