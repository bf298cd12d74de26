package wireworthy.paper;

import java.util.List;
import wireworthy.texts.TextBundle;

/**
 * A circuit drawn with the symbols of IEC 60617 and its figures: supply, fuse, cable out and back,
 * load.
 *
 * @param load what stands at the far end
 * @param supply at the battery
 * @param cable along the conductor
 * @param length between the two ends
 * @param taken at the load
 * @param beside at each of several loads how many of it there are, such as "×6", empty at a single
 *     one; no entries where the loads are not told apart
 */
public record CircuitOnPaper(
        Load load, String supply, String cable, String length, String taken, List<String> beside) {
    /** What stands at the far end of a drawn circuit. */
    public enum Load {
        LAMP,
        MOTOR,
        HEATER,
        CONVERTER,
        BATTERY,
        SEVERAL
    }

    private static final TextBundle PARTS = new TextBundle("parts");

    /** Loads side by side that are not told apart: the first, more between, and the last. */
    private static final List<String> FIRST_AND_LAST = List.of("…", "");

    /** The kind of object that {@link CircuitDrawers} draws. */
    static final String KIND = "circuit";

    public CircuitOnPaper {
        beside = List.copyOf(beside);
    }

    /** Puts it into a page; the letters are text, so that the page's font is used. */
    public void into(final Block page) {
        final Block box = page.add("div", KIND);
        final List<String> branches = beside.isEmpty() ? FIRST_AND_LAST : beside;
        box.add("object")
                .with("type", KIND)
                .with("data-load", load.name())
                .with("data-branches", String.valueOf(branches.size()));
        box.label(0, 15.5, supply);
        box.label(20, 2, PARTS.of("fuse"));
        box.label(33, 2, cable);
        box.label(26, 16.2, length);
        box.label(49, 29, taken);
        if (load == Load.MOTOR) {
            box.label(63.6, 15.5, "M");
        }
        if (load == Load.SEVERAL) {
            for (int i = 0; i < branches.size(); i++) {
                box.label(CircuitSketch.branch(i, branches.size()) + 2.6, 15.9, branches.get(i));
            }
        }
    }
}
