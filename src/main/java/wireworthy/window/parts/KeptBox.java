package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Parts one under the other; what did not change is not measured again. */
public class KeptBox extends VBox {
    private final KeptHeights heights = new KeptHeights();
    private final boolean made;

    public KeptBox(final Node... parts) {
        super(parts);
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

    /** Its parts keep the height they have: the least is not worked beside the preferred. */
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
