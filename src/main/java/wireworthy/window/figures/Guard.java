package wireworthy.window.figures;

import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Telling;

/**
 * A fuse and the weakest of the cables it guards.
 *
 * @param place where the fuse sits: "at the board"
 * @param rating A
 * @param floor A, the circuit current with its margin
 * @param ceiling A, what the weakest cable behind it can carry
 * @param cable that cable: "1 mm²"
 */
record Guard(String place, double rating, double floor, double ceiling, String cable) {
    /** Whether the cable can overheat before the fuse opens. */
    boolean overCable() {
        return rating > ceiling * (1 + StandardSizes.SAME);
    }

    /** Whether it opens though nothing is wrong. */
    boolean opensForNothing() {
        return rating < floor * (1 - StandardSizes.SAME);
    }

    boolean fits() {
        return !overCable() && !opensForNothing();
    }

    /** Whether some current lies between floor and ceiling. */
    boolean roomBetween() {
        return floor <= ceiling * (1 + StandardSizes.SAME);
    }

    String amps() {
        return FigureText.of(rating, Dimension.CURRENT);
    }

    String floorAmps() {
        return Telling.exact(Quantity.FUSE_FLOOR, floor);
    }

    String ceilingAmps() {
        return Telling.exact(Quantity.FUSE_CEILING, ceiling);
    }

    /** What comes of it. */
    String verdict() {
        if (overCable()) {
            return FigureTexts.of(
                    "guard.fire",
                    "amps",
                    amps(),
                    "place",
                    place,
                    "ceiling",
                    ceilingAmps(),
                    "cable",
                    cable);
        }
        if (opensForNothing()) {
            return FigureTexts.of(
                    "guard.idle", "amps", amps(), "place", place, "floor", floorAmps());
        }
        return FigureTexts.of("guard.fits", "amps", amps(), "place", place);
    }
}
