package wireworthy.window.parts;

import javafx.scene.layout.Region;

/** Small signs drawn by ourselves, since not every font has them. They take the text's size. */
public enum Icon {
    TICK("M1.2 8.4 L3.4 6.4 L6.2 9.4 L13 1.6 L14.8 3.2 L6.4 13.4 Z"),
    CROSS("M2 4 L4 2 L8 6 L12 2 L14 4 L10 8 L14 12 L12 14 L8 10 L4 14 L2 12 L6 8 Z"),
    CAUTION("M8 0 A8 8 0 1 1 7.99 0 Z M6.8 3 V9 H9.2 V3 Z M6.8 10.6 V13 H9.2 V10.6 Z"),
    /** A figure that is in question. */
    QUESTION(
            Screw.HEAD
                    + "M5 6.2 H7 V5.2 L7.4 4.8 H8.6 L9 5.2 V6 L7 8 V9.4 H9 V8.8 L11 6.8 V4.4"
                    + " L9.6 2.8 H6.4 L5 4.4 Z M6.9 10.8 V12.8 H9.1 V10.8 Z"),
    /** Something is still to come. */
    OPEN(Screw.HEAD + "M2.9 7 V9 H4.9 V7 Z M7 7 V9 H9 V7 Z M11.1 7 V9 H13.1 V7 Z"),
    /** Just about. */
    ABOUT(
            Screw.HEAD
                    + "M3.4 5.2 V7 L6 5.6 L10 7.2 L12.6 5.8 V4 L10 5.4 L6 3.8 Z"
                    + " M3.4 10.2 V12 L6 10.6 L10 12.2 L12.6 10.8 V9 L10 10.4 L6 8.8 Z"),
    /** Less than there should be. */
    LESS(Screw.HEAD + "M6.9 3 V8 H4.4 L8 13 L11.6 8 H9.1 V3 Z"),
    UP("M2 9 L4 11 L8 7 L12 11 L14 9 L8 3 Z"),
    DOWN("M2 7 L4 5 L8 9 L12 5 L14 7 L8 13 Z"),
    BACK("M9 2 L11 4 L7 8 L11 12 L9 14 L3 8 Z"),
    ON("M7 2 L13 8 L7 14 L5 12 L9 8 L5 4 Z"),
    /** A place for a screw, and none in it. */
    NO_SCREW(Screw.RING),
    /** A screw not driven home, its slot askew. */
    SCREW_LOOSE(Screw.RING + "M4.1 10.3 L10.3 4.1 L11.9 5.7 L5.7 11.9 Z"),
    /** Driven home: the slot is level. */
    SCREW_SNUG(Screw.RING + "M3.4 6.9 H12.6 V9.1 H3.4 Z"),
    /** Driven home and solid. */
    SCREW_TIGHT(Screw.HEAD + "M3 6.8 V9.2 H13 V6.8 Z"),
    /** Driven home a while ago: the slot stands upright. */
    SCREW_DUE(Screw.RING + "M6.9 3.4 H9.1 V12.6 H6.9 Z"),
    /** A solid one whose slot has turned. */
    SCREW_WORKED_LOOSE(Screw.HEAD + "M4.1 10.3 L5.7 11.9 L11.9 5.7 L10.3 4.1 Z");

    /** The head of a screw from above. */
    private static final class Screw {
        static final String HEAD = "M8 0 A8 8 0 1 1 7.99 0 Z ";
        static final String RING = HEAD + "M8 1.8 A6.2 6.2 0 1 0 8.01 1.8 Z ";
    }

    private final String path;

    Icon(final String path) {
        this.path = path;
    }

    /** A new node with the sign; colour it with {@code -fx-background-color} by its parent. */
    public Region node() {
        final Region region = new Region();
        region.getStyleClass().add(Styles.ICON);
        region.setStyle("-fx-shape: \"" + path + "\";");
        return region;
    }
}
