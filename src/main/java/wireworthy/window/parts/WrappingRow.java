package wireworthy.window.parts;

import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * Things side by side, on several rows where room is short; one that is wider than the row by
 * itself wraps its text. A plain flow would make the page as wide as its widest thing.
 */
final class WrappingRow extends KeptFlow {
    WrappingRow(final Node... things) {
        super(things);
        widthProperty().subscribe(any -> bound());
        getChildren().addListener((InvalidationListener) any -> bound());
    }

    private void bound() {
        final double room = getWidth() - snappedLeftInset() - snappedRightInset();
        for (final Node thing : getChildren()) {
            if (thing instanceof Region region) {
                region.setMaxWidth(room > 0 ? room : USE_PREF_SIZE);
            }
        }
    }

    /** As wide as the widest of its things has to be, not as it would like to be. */
    @Override
    protected double computeMinWidth(final double height) {
        return snappedLeftInset()
                + snappedRightInset()
                + getManagedChildren().stream()
                        .mapToDouble(thing -> thing.minWidth(-1))
                        .max()
                        .orElse(0);
    }
}
