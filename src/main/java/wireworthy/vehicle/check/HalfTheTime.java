package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.CIRCUIT_CURRENT;
import static wireworthy.rules.Quantity.LOAD_CURRENT;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.rules.Quantity;
import wireworthy.working.Worked;

/** Half the amps may come of twice the volts, and as well of running half the time. */
record HalfTheTime(Worked worked, Mark mark) {
    private static final Set<Quantity> CURRENTS = EnumSet.of(LOAD_CURRENT, CIRCUIT_CURRENT);
    private static final List<String> OTHER_VOLTAGE = List.of("other-system-voltage");

    /** The mark, saying so where it is. */
    Mark told() {
        return isHalf() ? mark.saying(Said.of("own.half-time", "mark", mark.explanation())) : mark;
    }

    private boolean isHalf() {
        return CURRENTS.contains(mark.ref().quantity())
                && !mark.isSound()
                && Marker.ids(mark).contains(OTHER_VOLTAGE)
                && mark.isRounded(worked.value(mark.ref()).orElse(Double.NaN) / 2);
    }
}
