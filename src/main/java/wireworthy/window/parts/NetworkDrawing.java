package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.shape.Circle;

/**
 * A cable that feeds several places in turn, one line for both conductors: battery, fuse, then each
 * place with the volts that arrive and what hangs there. A branch leaves downwards; a stretch that
 * leads back to a place closes a ring and ends in its name.
 */
public final class NetworkDrawing extends ScaledDrawing {
    /**
     * A place, and the stretch that leads to it.
     *
     * @param name of the place
     * @param volts that arrive, with a sign where they are too few
     * @param cable of the stretch
     * @param amps through it
     * @param loads what hangs there, a text each
     * @param again whether the place is drawn elsewhere, with all that lies behind it
     * @param beyond the places behind it
     */
    public record Place(
            String name,
            String volts,
            String cable,
            String amps,
            List<String> loads,
            boolean again,
            List<Place> beyond) {
        public Place {
            loads = List.copyOf(loads);
            beyond = List.copyOf(beyond);
        }

        private int deep() {
            return 1 + beyond.stream().mapToInt(Place::deep).max().orElse(0);
        }

        /** How many text sizes high it is, with all behind it. */
        private double high() {
            final double own = OWN + LOAD * loads.size();
            final double first = beyond.isEmpty() ? 0 : beyond.get(0).high();
            return Math.max(own, first) + beyond.stream().skip(1).mapToDouble(Place::high).sum();
        }
    }

    private static final double TOP = 2.6;
    private static final double FEED = 6;
    private static final double STEP = 11;
    private static final double OWN = 4.6;
    private static final double LOAD = 2;
    private static final double DOT = 0.28;

    /**
     * @param supply at the battery
     * @param fuse its rating
     * @param first the places the cable leads to from its fuse
     * @param inWords the same for those who don't see it
     */
    public NetworkDrawing(
            final String supply, final String fuse, final List<Place> first, final String inWords) {
        super(wide(first), high(first));
        setAccessibleText(inWords);
        final List<Node> parts = new ArrayList<>(feed(supply, fuse));
        beyond(FEED, TOP, 0, first, parts);
        draw(parts);
    }

    private static double wide(final List<Place> first) {
        return FEED + STEP * first.stream().mapToInt(Place::deep).max().orElse(0) + 4;
    }

    private static double high(final List<Place> first) {
        return Math.max(TOP + 4.4, TOP + first.stream().mapToDouble(Place::high).sum());
    }

    private static List<Node> feed(final String supply, final String fuse) {
        final List<Node> parts = new ArrayList<>();
        parts.add(lead(1.3, TOP, 1.3, TOP + 1.1));
        parts.addAll(Symbols.battery(at(1.3), at(TOP + 2), EM));
        parts.add(text(supply, 0, TOP + 4.2));
        parts.add(copper(1.3, TOP, FEED, TOP));
        parts.addAll(Symbols.fuse(at(3.8), at(TOP), EM));
        parts.add(text(fuse, 2.6, TOP - 0.9));
        return parts;
    }

    /** The first place goes straight on, the others leave downwards. */
    private static void beyond(
            final double x,
            final double y,
            final double below,
            final List<Place> places,
            final List<Node> parts) {
        double row = y;
        double used = below;
        for (int i = 0; i < places.size(); i++) {
            if (i > 0) {
                row = y + used;
                parts.add(copper(x, y, x, row));
            }
            place(x, row, places.get(i), parts);
            used = i == 0 ? Math.max(below, places.get(i).high()) : used + places.get(i).high();
        }
    }

    private static void place(
            final double from, final double y, final Place place, final List<Node> parts) {
        final double x = from + STEP;
        parts.add(copper(from, y, x, y));
        parts.add(text(place.cable(), from + 0.8, y - 0.5));
        parts.add(text(place.amps(), from + 0.8, y + 1.2));
        parts.add(dot(x, y, place.again()));
        parts.add(text(place.name() + "  " + place.volts(), x - 0.2, y - 1.7));
        loads(x, y, place.loads(), parts);
        final double own = OWN + LOAD * place.loads().size();
        beyond(x, y, own, place.beyond(), parts);
    }

    private static Node dot(final double x, final double y, final boolean again) {
        final Circle dot = new Circle(at(x), at(y), at(DOT));
        dot.getStyleClass()
                .addAll(again ? List.of(Styles.SYMBOL, Styles.SYMBOL_BODY) : List.of(Styles.JOINT));
        return dot;
    }

    /** Each load hangs on its lead down from the place. */
    private static void loads(
            final double x, final double y, final List<String> loads, final List<Node> parts) {
        if (!loads.isEmpty()) {
            parts.add(lead(x, y, x, y + LOAD * loads.size()));
        }
        for (int i = 0; i < loads.size(); i++) {
            final double row = y + LOAD * (i + 1);
            parts.add(lead(x, row, x + 0.7, row));
            parts.addAll(Symbols.load(at(x + 1.5), at(row), EM));
            parts.add(text(loads.get(i), x + 2.6, row + 0.35));
        }
    }
}
