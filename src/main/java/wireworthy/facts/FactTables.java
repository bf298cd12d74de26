package wireworthy.facts;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Every table there is, in reading order. A table's file is read when it is first asked for. */
public final class FactTables {
    private static final List<String> IDS =
            List.of(
                    "thin-wall",
                    "standard-wall",
                    "boat-cable",
                    "iso-10133",
                    "boat-bundling",
                    "boat-engine-space",
                    "iso-10133-engine-space",
                    "boat-cable-105-bundled",
                    "ambient-factors",
                    "grouping-factors",
                    "fuse-series",
                    "fuse-colours",
                    "fuse-loading",
                    "fuse-time-current",
                    "fuse-series-others",
                    "drop-limits",
                    "copper",
                    "copper-resistance",
                    "copper-temperature",
                    "vehicle-cable-resistance",
                    "aluminium",
                    "gauge",
                    "gauge-resistance",
                    "gauge-two-kinds",
                    "trade-names-australia",
                    "battery-and-solar",
                    "caravan",
                    "iso-10133-rules",
                    "boat-rules",
                    "aircraft-cable",
                    "aircraft-fuses",
                    "aircraft-drop",
                    "aircraft-drop-examples",
                    "aircraft-derating");
    private static final Map<String, FactTable> READ = new ConcurrentHashMap<>();

    private FactTables() {}

    /** All tables; reads those not read yet. */
    public static List<FactTable> all() {
        return IDS.stream().map(FactTables::named).toList();
    }

    /** The names of all tables, in reading order; reads none. */
    public static List<String> ids() {
        return IDS;
    }

    /**
     * One table.
     *
     * @throws IllegalArgumentException if there is none of this name; the message lists the names
     */
    public static FactTable named(final String id) {
        return READ.computeIfAbsent(UnknownName.unless(IDS, "table", id), FactFile::read);
    }
}
