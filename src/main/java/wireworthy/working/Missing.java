package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;

/** What people can usually look up or measure, the handiest first. */
final class Missing {
    static final List<Quantity> PRIMARY =
            List.of(
                    SUPPLY_VOLTAGE,
                    LOAD_POWER,
                    EFFICIENCY,
                    ONE_WAY_LENGTH,
                    SECTION,
                    BATTERY_CAPACITY,
                    BATTERY_VOLTAGE,
                    DAILY_ENERGY,
                    SUN_HOURS,
                    ARRAY_EFFICIENCY,
                    CHARGE_CURRENT,
                    CHARGE_EFFICIENCY,
                    INTERNAL_RESISTANCE,
                    START_MULTIPLE,
                    LOAD_CURRENT,
                    RESISTANCE,
                    VOLTAGE,
                    CURRENT,
                    TIME,
                    RESISTIVITY,
                    MARGIN,
                    STRANDS,
                    DIAMETER,
                    GAUGE,
                    USABLE_SHARE,
                    IN_SERIES,
                    IN_PARALLEL,
                    DROP,
                    CIRCUIT_CURRENT,
                    FUSE_FLOOR);

    private static final double DEAREST = 10;
    private static final double STEP = 0.2;

    private Missing() {}

    /** Offers all of them to the search, each dear, the handier cheaper. */
    static void offer(final RoadMap map, final Quantity asked) {
        for (int i = 0; i < PRIMARY.size(); i++) {
            if (PRIMARY.get(i) != asked) {
                map.start(Ref.circuit(PRIMARY.get(i)), DEAREST + STEP * i, false);
            }
        }
        map.explore();
    }
}
