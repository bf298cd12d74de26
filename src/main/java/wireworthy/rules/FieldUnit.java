package wireworthy.rules;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** The unit a quantity is usually given in, how it is shown, named and typed. */
record FieldUnit(Unit unit, String example) {

    private static final Map<Dimension, FieldUnit> ALL = all();

    static FieldUnit of(final Dimension dimension) {
        return Objects.requireNonNull(ALL.get(dimension));
    }

    private static Map<Dimension, FieldUnit> all() {
        final Map<Dimension, FieldUnit> all = new EnumMap<>(Dimension.class);
        for (final Dimension dimension : Dimension.values()) {
            all.put(dimension, listed(dimension));
        }
        return all;
    }

    private static FieldUnit listed(final Dimension dimension) {
        return switch (dimension) {
            case VOLTAGE -> field(dimension, "V", "volts", "12 V");
            case CURRENT -> field(dimension, "A", "amps", "4.5 A");
            case POWER -> field(dimension, "W", "watts", "54 W");
            case RESISTANCE -> field(dimension, "Ω", "ohms", "0.25 ohm");
            case CHARGE -> field(dimension, "Ah", "amp-hours", "100 Ah");
            case TIME -> field(dimension, "h", "hours", "8 h");
            case SHORT_TIME -> field(dimension, "s", "seconds", "0.1 s");
            case ENERGY -> field(dimension, "Wh", "watt-hours", "480 Wh");
            case SHARE -> field(dimension, "%", "per cent", "85 %");
            case FACTOR -> field(dimension, "", "a plain number", "1.25");
            case COUNT -> field(dimension, "", "a whole number", "6");
            case LENGTH -> field(dimension, "m", "metres", "7.5 m");
            case DIAMETER -> field(dimension, "mm", "millimetres", "1.78 mm");
            case AREA -> field(dimension, "mm²", "square millimetres", "2.5 mm2");
            case GAUGE -> field(dimension, "AWG", "a wire gauge", "12 AWG");
            case RESISTIVITY -> field(dimension, "Ω·mm²/m", "Ω·mm²/m", "0.0172 ohm mm2/m");
            case RESISTANCE_PER_LENGTH -> field(dimension, "mΩ/m", "mΩ/m", "7.41 mohm/m");
            case TEMPERATURE -> field(dimension, "°C", "degrees Celsius", "30 degC");
            case ADIABATIC_K -> field(dimension, "A·√s/mm²", "A·√s/mm²", "143 A s^0.5/mm2");
            case NAME -> field(dimension, "", "a name", "copper");
            case LIST -> field(dimension, "", "a list", "1.5 mm2");
        };
    }

    private static FieldUnit field(
            final Dimension dimension,
            final String shown,
            final String name,
            final String example) {
        final BigDecimal factor = BigDecimal.valueOf(dimension.scale());
        return new FieldUnit(Unit.of(dimension.unit(), shown, name, factor), example);
    }
}
