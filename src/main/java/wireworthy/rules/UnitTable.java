package wireworthy.rules;

import static wireworthy.rules.Prefix.CENTI;
import static wireworthy.rules.Prefix.KILO;
import static wireworthy.rules.Prefix.MEGA;
import static wireworthy.rules.Prefix.MICRO;
import static wireworthy.rules.Prefix.MILLI;
import static wireworthy.rules.Prefix.NANO;
import static wireworthy.rules.Prefix.NONE;
import static wireworthy.rules.Prefix.PICO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Lists every unit and its spellings, kind by kind. */
final class UnitTable {

    private static final BigDecimal FOOT = new BigDecimal("0.3048");
    private static final BigDecimal INCH = new BigDecimal("0.0254");
    private static final BigDecimal KELVIN_ZERO = new BigDecimal("-273.15");

    /** The area of a circle one mil (0.0254 mm) across, in square metres. */
    private static final BigDecimal CIRCULAR_MIL =
            new BigDecimal("0.78539816339744830962").multiply(new BigDecimal("2.54e-5").pow(2));

    private static final List<String> METRE = List.of("m", "metre", "metres", "meter", "meters");
    private static final List<String> OHM = List.of("ohm", "ohms");

    private final Map<Dimension, Spellings> kinds = new EnumMap<>(Dimension.class);

    private UnitTable() {
        electrical();
        stored();
        time();
        plain();
        length();
        area();
        resistivity();
        resistancePerLength();
        temperature();
        other();
    }

    static Map<Dimension, Spellings> kinds() {
        return new UnitTable().kinds;
    }

    private void electrical() {
        final List<Prefix> all = List.of(NONE, PICO, NANO, MICRO, MILLI, KILO, MEGA);
        prefixed(
                Dimension.VOLTAGE, all, unit("V", "volts", "1"),
                "V", "volt", "volts", "VDC", "VAC", "volts DC");
        prefixed(
                Dimension.CURRENT, all, unit("A", "amps", "1"),
                "A", "amp", "amps", "ampere", "amperes", "A DC");
        prefixed(Dimension.POWER, all, unit("W", "watts", "1"), "W", "watt", "watts");
        final Unit ohm = shown("ohm", "Ω", "ohms", "1");
        prefixed(Dimension.RESISTANCE, all, ohm, "ohm", "ohms");
        of(Dimension.RESISTANCE).addExact("R", ohm);
        words(Dimension.RESISTANCE, MEGA.of(ohm), "megohm", "megohms");
    }

    private void stored() {
        prefixed(
                Dimension.CHARGE, List.of(NONE, MILLI, KILO, MEGA), unit("Ah", "amp-hours", "3600"),
                "Ah", "amp hour", "amp hours", "ampere hour", "ampere hours", "Ahr", "Ahrs",
                "amp hrs");
        prefixed(
                Dimension.CHARGE, List.of(NONE, MILLI, KILO), unit("C", "coulombs", "1"),
                "C", "coulomb", "coulombs");
        prefixed(
                Dimension.ENERGY, List.of(NONE, MILLI, KILO, MEGA), unit("Wh", "watt-hours", "3600"),
                "Wh", "watt hour", "watt hours", "Whr", "Whrs", "watt hrs");
        prefixed(
                Dimension.ENERGY, List.of(NONE, MILLI, KILO, MEGA), unit("J", "joules", "1"),
                "J", "joule", "joules");
    }

    private void time() {
        words(Dimension.TIME, unit("h", "hours", "3600"), "h", "hr", "hrs", "hour", "hours");
        words(
                Dimension.TIME, unit("min", "minutes", "60"),
                "min", "mins", "minute", "minutes");
        words(Dimension.TIME, unit("d", "days", "86400"), "d", "day", "days");
        prefixed(
                Dimension.TIME, List.of(NONE, MICRO, MILLI), unit("s", "seconds", "1"),
                "s", "sec", "secs", "second", "seconds");
    }

    private void plain() {
        final Unit percent = unit("%", "per cent", "0.01");
        words(Dimension.SHARE, percent, "%", "percent", "per cent", "pct");
        words(Dimension.FACTOR, percent, "%", "percent", "per cent", "pct");
        words(Dimension.FACTOR, unit("", "a plain number", "1"), "x", "times");
        words(Dimension.COUNT, unit("", "a whole number", "1"), "x", "off", "pcs", "pieces");
    }

    private void length() {
        prefixed(
                Dimension.LENGTH, List.of(NONE, MICRO, MILLI, CENTI, KILO),
                unit("m", "metres", "1"), METRE.toArray(String[]::new));
        words(
                Dimension.LENGTH, Unit.of("ft", "ft", "feet", FOOT), "ft", "foot", "feet", "'");
        words(
                Dimension.LENGTH, Unit.of("in", "in", "inches", INCH),
                "in", "inch", "inches", "ins", "\"", "''");
        words(Dimension.LENGTH, unit("yd", "yards", "0.9144"), "yd", "yds", "yard", "yards");
        words(
                Dimension.LENGTH, unit("mil", "thousandths of an inch", "0.0000254"),
                "mil", "mils", "thou");
    }

    private void area() {
        squared(shown("mm2", "mm²", "square millimetres", "1e-6"), "mm", "milli");
        squared(shown("cm2", "cm²", "square centimetres", "1e-4"), "cm", "centi");
        squared(shown("m2", "m²", "square metres", "1"), "m", "");
        words(
                Dimension.AREA, Unit.of("in2", "in²", "square inches", INCH.multiply(INCH)),
                "in2", "sq in", "square inch", "square inches");
        words(
                Dimension.AREA, Unit.of("cmil", "cmil", "circular mils", CIRCULAR_MIL),
                "cmil", "cmils", "circular mil", "circular mils");
        words(
                Dimension.AREA,
                Unit.of(
                        "kcmil", "kcmil", "thousands of circular mils",
                        CIRCULAR_MIL.scaleByPowerOfTen(3)),
                "kcmil", "kcmils", "MCM", "mcm");
    }

    private void squared(final Unit unit, final String letters, final String prefix) {
        words(
                Dimension.AREA, unit,
                letters + "2", "sq" + letters, "square" + letters, letters + "sq",
                "square" + prefix + "metre", "square" + prefix + "metres",
                "square" + prefix + "meter", "square" + prefix + "meters",
                "sq" + prefix + "metres", "sq" + prefix + "meters");
    }

    private void resistivity() {
        final List<Prefix> prefixes = List.of(NONE, NANO, MICRO, MILLI);
        over(
                Dimension.RESISTIVITY, prefixes, "ohm mm2/m", "Ω·mm²/m", "1e-6",
                "mm2/m", "sqmm/m", "mm2/metre", "mm2/meter", "sqmm/metre", "sqmm/meter");
        over(
                Dimension.RESISTIVITY, prefixes, "ohm m", "Ω·m", "1", METRE.toArray(String[]::new));
        over(Dimension.RESISTIVITY, prefixes, "ohm cm", "Ω·cm", "0.01", "cm");
        final BigDecimal mils = CIRCULAR_MIL.divide(FOOT, MathContext.DECIMAL128);
        over(
                Dimension.RESISTIVITY, prefixes, "ohm cmil/ft", "Ω·cmil/ft", mils.toString(),
                "cmil/ft", "cmil/foot", "cmils/ft");
    }

    private void resistancePerLength() {
        final Dimension kind = Dimension.RESISTANCE_PER_LENGTH;
        final List<Prefix> prefixes = List.of(NONE, MICRO, MILLI, MEGA);
        over(kind, prefixes, "ohm/m", "Ω/m", "1", "/m", "/metre", "/meter");
        over(kind, prefixes, "ohm/cm", "Ω/cm", "100", "/cm");
        over(
                kind, prefixes, "ohm/km", "Ω/km", "0.001",
                "/km", "/kilometre", "/kilometer", "/1000m", "/1,000m");
        final BigDecimal perFoot = BigDecimal.ONE.divide(FOOT, MathContext.DECIMAL128);
        over(kind, prefixes, "ohm/ft", "Ω/ft", perFoot.toString(), "/ft", "/foot");
        over(
                kind, prefixes, "ohm/kft", "Ω/kft", perFoot.scaleByPowerOfTen(-3).toString(),
                "/kft", "/1000ft", "/1,000ft", "/1000feet", "/1,000feet");
        words(kind, shown("mV/A/m", "mV/A/m", "mV/A/m", "0.001"), "mV/A/m", "mV/Am");
        words(kind, shown("V/A/m", "V/A/m", "V/A/m", "1"), "V/A/m", "V/Am");
    }

    /** Ohms joined to what follows them, in every spelling of the ohm. */
    private void over(
            final Dimension kind, final List<Prefix> prefixes, final String word,
            final String shown, final String factor, final String... rests) {
        final Unit unit = Unit.of(word, shown, shown, new BigDecimal(factor));
        for (final String rest : rests) {
            for (final String ohm : OHM) {
                for (final Prefix prefix : prefixes) {
                    final Unit scaled = prefix.of(unit);
                    final Unit named =
                            Unit.of(scaled.word(), scaled.shown(), scaled.shown(), scaled.factor());
                    spell(kind, prefix, named, ohm + rest);
                }
            }
        }
    }

    private void temperature() {
        final Unit celsius = shown("degC", "°C", "degrees Celsius", "1");
        words(
                Dimension.TEMPERATURE, celsius,
                "degC", "C", "celsius", "degrees C", "degrees celsius", "centigrade");
        final BigDecimal ratio =
                BigDecimal.valueOf(5).divide(BigDecimal.valueOf(9), MathContext.DECIMAL128);
        final BigDecimal zero = BigDecimal.valueOf(-32).multiply(ratio);
        final Unit fahrenheit = new Unit("degF", "°F", "degrees Fahrenheit", ratio, zero);
        words(
                Dimension.TEMPERATURE, fahrenheit,
                "degF", "F", "fahrenheit", "degrees F", "degrees fahrenheit");
        for (final String bare : List.of("deg", "degree", "degrees")) {
            of(Dimension.TEMPERATURE).addAnyCase(bare, celsius);
            of(Dimension.TEMPERATURE).addAnyCase(bare, fahrenheit);
        }
        final Unit kelvin = new Unit("K", "K", "kelvins", BigDecimal.ONE, KELVIN_ZERO);
        words(Dimension.TEMPERATURE, kelvin, "kelvin", "kelvins");
        of(Dimension.TEMPERATURE).addExact("K", kelvin);
    }

    private void other() {
        words(Dimension.GAUGE, unit("AWG", "wire gauge", "1"), "AWG", "ga", "gauge");
        words(
                Dimension.ADIABATIC_K,
                shown("A s^0.5/mm2", "A·√s/mm²", "A·√s/mm²", "1e6"),
                "A s^0.5/mm2", "A√s/mm2", "A sqrt(s)/mm2", "A s^1/2/mm2", "A s^½/mm2");
    }

    private void prefixed(
            final Dimension kind, final List<Prefix> prefixes, final Unit unit,
            final String... spellings) {
        for (final Prefix prefix : prefixes) {
            final Unit scaled = prefix.of(unit);
            for (final String spelling : spellings) {
                spell(kind, prefix, scaled, spelling);
            }
        }
    }

    private void spell(
            final Dimension kind, final Prefix prefix, final Unit unit, final String spelling) {
        final String shortForm = prefix.letter + spelling;
        if (prefix.isExact()) {
            of(kind).addExact(shortForm, unit);
        } else if (prefix == MEGA && !isUsualInMega(kind, unit)) {
            of(kind).addAnyCase(shortForm, unit);
        } else {
            of(kind).add(shortForm, unit);
        }
        if (prefix != NONE) {
            of(kind).add(prefix.word + spelling, unit);
        }
    }

    /** "MA" is more often milliamps with the wrong capital than millions of amps. */
    private static boolean isUsualInMega(final Dimension kind, final Unit unit) {
        return kind == Dimension.RESISTANCE || unit.word().equals("MJ");
    }

    private void words(final Dimension kind, final Unit unit, final String... spellings) {
        for (final String spelling : spellings) {
            of(kind).add(spelling, unit);
        }
    }

    private Spellings of(final Dimension kind) {
        return kinds.computeIfAbsent(kind, k -> new Spellings());
    }

    private static Unit unit(final String word, final String name, final String factor) {
        return shown(word, word, name, factor);
    }

    private static Unit shown(
            final String word, final String shown, final String name, final String factor) {
        return Unit.of(word, shown, name, new BigDecimal(factor));
    }
}
