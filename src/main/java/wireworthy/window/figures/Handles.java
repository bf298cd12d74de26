package wireworthy.window.figures;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import wireworthy.window.parts.Styles;

/** Handles side by side, evenly, in as many columns as the text size lets stand in the room. */
final class Handles extends Region {
    private static final double LEAST_WIDTH = 12.5;
    private static final double GAP = 1.5;

    private final Label ruler = new Label();

    Handles(final List<Knob> knobs, final List<Tick> ticks) {
        ruler.setManaged(false);
        ruler.setVisible(false);
        getChildren().add(ruler);
        knobs.forEach(knob -> getChildren().add(new KnobHandle(knob)));
        ticks.forEach(tick -> getChildren().add(box(tick)));
    }

    private static CheckBox box(final Tick tick) {
        final CheckBox box = new CheckBox(tick.label());
        box.getStyleClass().add(Styles.SWITCH);
        box.setWrapText(true);
        box.selectedProperty().bindBidirectional(tick.on());
        return box;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(final double width) {
        final int columns = columns(width);
        final List<Node> parts = getManagedChildren();
        final double rows = Math.ceil((double) parts.size() / columns);
        return rows * rowHeight(width) + (rows - 1) * GAP / 2 * em();
    }

    @Override
    protected double computeMinHeight(final double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        final List<Node> parts = getManagedChildren();
        final int columns = columns(getWidth());
        final double wide = columnWidth(getWidth());
        final double high = rowHeight(getWidth());
        for (int i = 0; i < parts.size(); i++) {
            final int row = i / columns;
            parts.get(i)
                    .resizeRelocate(
                            i % columns * (wide + GAP * em()),
                            row * (high + GAP / 2 * em()),
                            wide,
                            high);
        }
    }

    private double rowHeight(final double width) {
        return getManagedChildren().stream()
                .mapToDouble(part -> part.prefHeight(columnWidth(width)))
                .max()
                .orElse(0);
    }

    private double columnWidth(final double width) {
        final int columns = columns(width);
        return Math.floor((width - (columns - 1) * GAP * em()) / columns);
    }

    private int columns(final double width) {
        final int parts = getManagedChildren().size();
        final int fitting = (int) ((width / em() + GAP) / (LEAST_WIDTH + GAP));
        final int most = Math.max(1, Math.min(parts, fitting));
        // Four stand better two and two than three and one.
        return (int) Math.ceil(parts / Math.ceil((double) parts / most));
    }

    private double em() {
        return ruler.getFont().getSize();
    }
}
