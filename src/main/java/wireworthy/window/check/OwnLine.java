package wireworthy.window.check;

import javafx.geometry.Orientation;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import wireworthy.window.parts.Styles;

/**
 * A quantity, what comes out and what is typed, in columns of the same width in every line; where
 * that leaves no room for the name, it stands above the two.
 */
final class OwnLine extends HBox {
    /** Widths in spacings: a head has smaller text than what stands under it. */
    private static final double VALUE = 5.5;

    private static final double OWN = 8;

    /** Under this width, in spacings, the longest word of a name has no room. */
    private static final double ROOM_FOR_NAME = 7;

    private final Label name;
    private final Label value;
    private final Control own;

    OwnLine(final Label name, final Label value, final Control own) {
        super(name, value, own);
        this.name = name;
        this.value = value;
        this.own = own;
        getStyleClass().add(Styles.OWN_FIGURES);
        value.getStyleClass().add(Styles.OWN_VALUE);
    }

    private double columns() {
        return (VALUE + 1 + OWN) * getSpacing();
    }

    private double beside(final double width) {
        return width - columns() - getSpacing();
    }

    private boolean isNarrow(final double width) {
        return beside(width) < ROOM_FOR_NAME * getSpacing();
    }

    private double above(final double width) {
        return name.getText().isEmpty() ? 0 : name.prefHeight(width);
    }

    private double figures() {
        return Math.max(value.prefHeight(VALUE * getSpacing()), own.prefHeight(-1));
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(final double height) {
        return columns();
    }

    @Override
    protected double computeMinHeight(final double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(final double width) {
        if (width < 0) {
            return figures();
        }
        return isNarrow(width)
                ? above(width) + figures()
                : Math.max(name.prefHeight(beside(width)), figures());
    }

    @Override
    protected void layoutChildren() {
        final double width = getWidth();
        final boolean narrow = isNarrow(width);
        final double top = narrow ? above(width) : 0;
        final double high = getHeight() - top;
        final double ofOwn = OWN * getSpacing();
        place(name, 0, 0, narrow ? width : beside(width), narrow ? top : high);
        place(value, width - columns(), top, VALUE * getSpacing(), high);
        place(own, width - ofOwn, top, ofOwn, high);
    }

    private void place(
            final Control part,
            final double x,
            final double y,
            final double width,
            final double room) {
        final double height = Math.min(room, part.prefHeight(width));
        part.resizeRelocate(
                snapPositionX(x),
                snapPositionY(y + (room - height) / 2),
                snapSizeX(width),
                snapSizeY(height));
    }
}
