package wireworthy.vehicle.sheet;

import java.util.List;
import java.util.stream.Stream;
import wireworthy.rules.Dimension;

/** The units that cells without one may be in. */
final class SheetUnits {
    /** A share written as a part of one, as spreadsheets have it: 0.88. */
    static final String OF_ONE = "of 1";

    private static final List<String> COMMON =
            List.of(
                    "V", "mV", "A", "mA", "W", "kW", "mW", "ohm", "mohm", "Ah", "mAh", "h", "min",
                    "s", "Wh", "kWh", "m", "cm", "mm", "ft", "in", "mm2", "AWG", "degC", "degF");

    private SheetUnits() {}

    /** Those of a kind; none for words and plain numbers. */
    static List<String> of(final Dimension dimension) {
        return switch (dimension) {
            case NAME, LIST, COUNT, FACTOR, GAUGE -> List.of();
            case SHARE -> List.of("%", OF_ONE);
            default ->
                    Stream.concat(Stream.of(Headings.unitOf(dimension)), COMMON.stream())
                            .filter(unit -> Headings.isUnit(unit, dimension))
                            .map(unit -> unit.equals("mm²") ? "mm2" : unit)
                            .distinct()
                            .toList();
        };
    }
}
