package wireworthy.window.figures;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import wireworthy.lessons.Handle;
import wireworthy.rules.Quantity;
import wireworthy.working.Telling;

/** A load and whether it is switched on. */
record LoadSwitch(Handle.Load load, BooleanProperty on) {
    private static final double SECONDS_A_DAY = 86_400;

    /**
     * The switches of a handle, in its order.
     *
     * @throws IllegalArgumentException if the handle holds no loads
     */
    static List<LoadSwitch> of(final Handle handle) {
        if (handle instanceof Handle.Switches loads) {
            return loads.loads().stream()
                    .map(load -> new LoadSwitch(load, new SimpleBooleanProperty(load.on())))
                    .toList();
        }
        throw new IllegalArgumentException("No loads to switch: " + handle);
    }

    /** The load's name, rating and time: "house lamps, 6 × 9 W, 4 h a day". */
    String text() {
        final String watts = Telling.result(Quantity.LOAD_POWER, load.watts());
        final String count = load.count() == 1 ? "" : load.count() + " × ";
        return load.name() + ", " + count + watts + time();
    }

    private String time() {
        return load.share().isEmpty()
                ? ""
                : ", "
                        + FigureTexts.of(
                                "a-day",
                                "time",
                                Telling.result(
                                        Quantity.TIME, load.share().getAsDouble() * SECONDS_A_DAY));
    }
}
