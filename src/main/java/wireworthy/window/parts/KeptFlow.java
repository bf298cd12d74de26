package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.layout.FlowPane;

/** Parts side by side, on as many rows as needed; what did not change is not measured again. */
public class KeptFlow extends FlowPane {
    private final KeptHeights heights = new KeptHeights();
    private final boolean made;

    public KeptFlow(final Node... parts) {
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

    @Override
    protected double computeMinHeight(final double width) {
        return prefHeight(width);
    }

    @Override
    protected double computePrefHeight(final double width) {
        return heights.preferred(width, this::heightOfRows);
    }

    /** The height of all rows, worked where it is not known. */
    protected double heightOfRows(final double width) {
        return super.computePrefHeight(width);
    }
}
