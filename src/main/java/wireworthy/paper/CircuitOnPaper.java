package wireworthy.paper;

import java.util.Locale;

/**
 * A circuit drawn with the symbols of IEC 60617 and its figures: supply, fuse, cable out and back,
 * load.
 *
 * @param load what stands at the far end
 * @param supply at the battery
 * @param cable along the conductor
 * @param length between the two ends
 * @param taken at the load
 */
public record CircuitOnPaper(Load load, String supply, String cable, String length, String taken) {
    /** What stands at the far end of a drawn circuit. */
    public enum Load {
        LAMP,
        MOTOR,
        HEATER,
        CONVERTER,
        BATTERY,
        SEVERAL
    }

    /** The kind of object that {@link CircuitDrawers} draws. */
    static final String KIND = "circuit";

    /** Puts it into a page; the letters are text, so that the page's font is used. */
    public void into(final Block page) {
        final Block box = page.add("div", KIND);
        box.add("object").with("type", KIND).with("data-load", load.name());
        label(box, 0, 15.5, supply);
        label(box, 20, 2, "fuse");
        label(box, 33, 2, cable);
        label(box, 26, 16.2, length);
        label(box, 49, 29, taken);
        if (load == Load.MOTOR) {
            label(box, 63.6, 15.5, "M");
        }
    }

    private static void label(final Block box, double left, double top, String words) {
        if (!words.isEmpty()) {
            final String place = String.format(Locale.ROOT, "left: %smm; top: %smm", left, top);
            box.add("div").with("style", place).text(words);
        }
    }
}
