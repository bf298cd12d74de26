package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Parts one under the other; what did not change is not measured again. */
public class KeptBox extends VBox {
    private final KeptHeight least = new KeptHeight();
    private final KeptHeight preferred = new KeptHeight();
    private final KeptHeight most = new KeptHeight();
    private final boolean made;

    public KeptBox(final Node... parts) {
        super(parts);
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
