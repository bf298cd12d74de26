package wireworthy.window.figures;

import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.text.TextAlignment;
import wireworthy.window.parts.KeptHeights;

/** Draws in text sizes, so that a drawing grows with the text; as wide as the room it gets. */
abstract class Drawing extends Region {
    private static final double USUAL_WIDTH = 44;
    private static final double LEAST_WIDTH = 18;
    private static final double BETWEEN = 0.2;

    /** Its font tells how large the text is. */
    private final Label ruler = new Label();

    private final KeptHeights heights = new KeptHeights();
    private double taken;
    private double takenAt;
    private double takenIn;

    Drawing() {
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        ruler.setVisible(false);
        ruler.fontProperty().addListener(change -> requestLayout());
        getChildren().add(ruler);
    }

    /** How high the drawing is, in text sizes, when it is so many text sizes wide. */
    abstract double height(double width);

    /** Puts everything in its place; all lengths in text sizes. */
    abstract void draw(double width);

    /** Pixels of one text size. */
    final double em() {
        return ruler.getFont().getSize();
    }

    @Override
    public void requestLayout() {
        heights.forget();
        super.requestLayout();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(final double height) {
        return USUAL_WIDTH * em();
    }

    @Override
    protected double computeMinWidth(final double height) {
        return LEAST_WIDTH * em();
    }

    /** Room once taken is kept, else all under the figure would jump at a flip to and fro. */
    @Override
    protected double computePrefHeight(final double width) {
        final double room = width < 0 ? USUAL_WIDTH * em() : width;
        if (room != takenAt || em() != takenIn) {
            taken = 0;
            takenAt = room;
            takenIn = em();
        }
        taken = Math.max(taken, heights.preferred(room, wide -> height(wide / em()) * em()));
        return taken;
    }

    @Override
    protected double computeMinHeight(final double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        draw(getWidth() / em());
    }

    /** A text of the drawing. */
    final Label text(final String... styles) {
        final Label label = add(new Label(), styles);
        label.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
        return label;
    }

    /** A text of the drawing that takes as many lines as it needs. */
    final Label paragraph(final String... styles) {
        final Label label = add(new Label(), styles);
        label.setWrapText(true);
        return label;
    }

    /** How high a text is that may be so wide, in text sizes. */
    final double high(final Label label, final double wide) {
        label.applyCss();
        return Math.ceil(label.prefHeight(wide * em())) / em();
    }

    /** A line of the drawing. */
    final Line line(final String... styles) {
        return add(new Line(), styles);
    }

    /** An area of the drawing. */
    final Region area(final String... styles) {
        return add(new Region(), styles);
    }

    /** Takes a part into the drawing. */
    final <N extends Node> N add(final N part, final String... styles) {
        part.getStyleClass().addAll(styles);
        part.setManaged(false);
        getChildren().add(part);
        return part;
    }

    /** Lays a line from one point to another. */
    final void lay(
            final Line line, final double x, final double y, final double toX, final double toY) {
        line.setStartX(x * em());
        line.setStartY(y * em());
        line.setEndX(toX * em());
        line.setEndY(toY * em());
    }

    /** Makes a line so thick. */
    final void thick(final Line line, final double width) {
        line.setStrokeWidth(width * em());
    }

    /** Lays an area. */
    final void lay(
            final Region part,
            final double x,
            final double y,
            final double width,
            final double height) {
        part.resizeRelocate(
                x * em(), y * em(), Math.max(0, width) * em(), Math.max(0, height) * em());
    }

    /** How wide a text is, in text sizes. */
    final double width(final Label label) {
        label.applyCss();
        return Math.ceil(label.prefWidth(-1)) / em();
    }

    /** Puts a text with its left edge, middle or right edge at x; never outside the drawing. */
    final void put(final Label label, final Pos at, final double x, final double y) {
        final double wide = width(label);
        final double left =
                switch (at.getHpos()) {
                    case LEFT -> x;
                    case CENTER -> x - wide / 2;
                    case RIGHT -> x - wide;
                };
        final double most = getWidth() / em() - wide;
        label.setVisible(!label.getText().isEmpty());
        label.resizeRelocate(
                Math.max(0, Math.min(most, left)) * em(),
                y * em(),
                wide * em(),
                Math.ceil(label.prefHeight(-1)));
    }

    /** A text of several lines across the drawing. */
    final <L extends Label> L across(final L label, final String... styles) {
        add(label, styles);
        label.setAlignment(Pos.TOP_CENTER);
        label.setTextAlignment(TextAlignment.CENTER);
        label.setWrapText(true);
        return label;
    }

    /** How high texts stand one below another across so wide a drawing. */
    final double stacked(final double width, final Label... texts) {
        return Stream.of(texts).mapToDouble(text -> high(text, width) + BETWEEN).sum();
    }

    /** Puts texts one below another across the drawing, from y down. */
    final void stack(final double width, final double y, final Label... texts) {
        double top = y;
        for (final Label text : texts) {
            final double high = high(text, width);
            lay(text, 0, top, width, high);
            top += high + BETWEEN;
        }
    }
}
