package wireworthy.rules;

import static wireworthy.rules.Prefix.CENTI;
import static wireworthy.rules.Prefix.KILO;
import static wireworthy.rules.Prefix.MEGA;
import static wireworthy.rules.Prefix.MICRO;
import static wireworthy.rules.Prefix.MILLI;
import static wireworthy.rules.Prefix.NANO;
import static wireworthy.rules.Prefix.NONE;
import static wireworthy.rules.Prefix.PICO;
import static wireworthy.rules.UnitBook.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;

/** Lists every unit and its spellings, kind by kind. */
final class UnitTable {

    private static final BigDecimal FOOT = new BigDecimal("0.3048");
    private static final BigDecimal INCH = new BigDecimal("0.0254");
    private static final BigDecimal QUARTER_PI = new BigDecimal("0.78539816339744830962");

    /** The area of a circle one mil (0.0254 mm) across, in square metres. */
    private static final BigDecimal CIRCULAR_MIL =
            QUARTER_PI.multiply(new BigDecimal("2.54e-5").pow(2));

    private static final String METRES = "m, metre, metres, meter, meters";
    private static final String PERCENTS = "%, percent, per cent, pct";

    private final UnitBook book = new UnitBook();

    private UnitTable() {
        electrical();
        charge();
        energy();
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
        return new UnitTable().book.kinds();
    }

    private void electrical() {
        final List<Prefix> all = List.of(NONE, PICO, NANO, MICRO, MILLI, KILO, MEGA);
        final Unit ohm = unit("ohm", "Ω", "ohms", "1");
        book.add(
                Dimension.VOLTAGE,
                all,
                unit("V", "volts", "1"),
                "V, volt, volts, VDC, VAC, volts DC");
        book.add(
                Dimension.CURRENT,
                all,
                unit("A", "amps", "1"),
                "A, amp, amps, ampere, amperes, A DC");
        book.add(Dimension.POWER, all, unit("W", "watts", "1"), "W, watt, watts");
        book.add(Dimension.RESISTANCE, all, ohm, "ohm, ohms");
        book.add(Dimension.RESISTANCE, MEGA.of(ohm), "megohm, megohms");
        book.of(Dimension.RESISTANCE).addExact("R", ohm);
    }

    private void charge() {
        book.add(
                Dimension.CHARGE,
                List.of(NONE, MILLI, KILO, MEGA),
                unit("Ah", "amp-hours", "3600"),
                "Ah, amp hour, amp hours, ampere hour, ampere hours, Ahr, Ahrs, amp hrs");
        book.add(
                Dimension.CHARGE,
                List.of(NONE, MILLI, KILO),
                unit("C", "coulombs", "1"),
                "C, coulomb, coulombs");
    }

    private void energy() {
        final List<Prefix> prefixes = List.of(NONE, MILLI, KILO, MEGA);
        book.add(
                Dimension.ENERGY,
                prefixes,
                unit("Wh", "watt-hours", "3600"),
                "Wh, watt hour, watt hours, Whr, Whrs, watt hrs");
        book.add(Dimension.ENERGY, prefixes, unit("J", "joules", "1"), "J, joule, joules");
    }

    private void time() {
        book.add(Dimension.TIME, unit("d", "days", "86400"), "d, day, days");
        book.add(Dimension.TIME, unit("h", "hours", "3600"), "h, hr, hrs, hour, hours");
        book.add(Dimension.TIME, unit("min", "minutes", "60"), "min, mins, minute, minutes");
        book.add(
                Dimension.TIME,
                List.of(NONE, MICRO, MILLI),
                unit("s", "seconds", "1"),
                "s, sec, secs, second, seconds");
    }

    private void plain() {
        final Unit percent = unit("%", "per cent", "0.01");
        book.add(Dimension.SHARE, percent, PERCENTS);
        book.add(Dimension.FACTOR, percent, PERCENTS);
        book.add(Dimension.FACTOR, unit("", "a plain number", "1"), "x, times");
        book.add(Dimension.COUNT, unit("", "a whole number", "1"), "x, off, pcs, pieces");
    }

    private void length() {
        book.add(
                Dimension.LENGTH,
                List.of(NONE, MICRO, MILLI, CENTI, KILO),
                unit("m", "metres", "1"),
                METRES);
        book.add(Dimension.LENGTH, Unit.of("ft", "ft", "feet", FOOT), "ft, foot, feet, '");
        book.add(
                Dimension.LENGTH,
                Unit.of("in", "in", "inches", INCH),
                "in, ins, inch, inches, \", ''");
        book.add(Dimension.LENGTH, unit("yd", "yards", "0.9144"), "yd, yds, yard, yards");
        book.add(
                Dimension.LENGTH,
                unit("mil", "thousandths of an inch", "0.0000254"),
                "mil, mils, thou");
    }

    private void area() {
        final Unit millimetres = unit("mm2", "mm²", "square millimetres", "1e-6");
        squared(millimetres, "mm", "millimetre");
        book.add(Dimension.AREA, millimetres, "qmm");
        squared(unit("cm2", "cm²", "square centimetres", "1e-4"), "cm", "centimetre");
        squared(unit("m2", "m²", "square metres", "1"), "m", "metre");
        final Unit inches = Unit.of("in2", "in²", "square inches", INCH.pow(2));
        squared(inches, "in", "inch");
        book.add(Dimension.AREA, inches, "square inches");
        book.add(
                Dimension.AREA,
                Unit.of("cmil", "cmil", "circular mils", CIRCULAR_MIL),
                "cmil, cmils, circular mil, circular mils");
        book.add(
                Dimension.AREA,
                Unit.of(
                        "kcmil",
                        "kcmil",
                        "thousands of circular mils",
                        CIRCULAR_MIL.scaleByPowerOfTen(3)),
                "kcmil, kcmils, MCM, mcm");
    }

    private void squared(final Unit unit, final String symbol, final String length) {
        final String american = length.replace("metre", "meter");
        book.add(Dimension.AREA, unit, symbol + "2, " + symbol + "sq");
        for (final String square : List.of("sq", "square")) {
            for (final String root : List.of(symbol, length, american)) {
                book.add(Dimension.AREA, unit, square + root + ", " + square + root + "s");
            }
        }
    }

    private void resistivity() {
        final Dimension kind = Dimension.RESISTIVITY;
        final List<Prefix> prefixes = List.of(NONE, NANO, MICRO, MILLI);
        final BigDecimal mils = CIRCULAR_MIL.divide(FOOT, MathContext.DECIMAL128);
        book.addOhms(
                kind,
                prefixes,
                unit("ohm mm2/m", "Ω·mm²/m", new BigDecimal("1e-6")),
                "mm2/m, sqmm/m, mm2/metre, mm2/meter, sqmm/metre, sqmm/meter");
        book.addOhms(kind, prefixes, unit("ohm m", "Ω·m", BigDecimal.ONE), METRES);
        book.addOhms(kind, prefixes, unit("ohm cm", "Ω·cm", new BigDecimal("0.01")), "cm");
        book.addOhms(
                kind,
                prefixes,
                unit("ohm cmil/ft", "Ω·cmil/ft", mils),
                "cmil/ft, cmil/foot, cmils/ft");
    }

    private void resistancePerLength() {
        ohmsPer("m", BigDecimal.ONE, "/m, /metre, /meter");
        ohmsPer("cm", new BigDecimal("0.01"), "/cm, /centimetre, /centimeter");
        ohmsPer("km", new BigDecimal("1000"), "/km, /kilometre, /kilometer, /1000m, /1,000m");
        ohmsPer("ft", FOOT, "/ft, /foot");
        ohmsPer("kft", FOOT.scaleByPowerOfTen(3), "/kft, /1000ft, /1,000ft, /1000feet, /1,000feet");
        final Dimension kind = Dimension.RESISTANCE_PER_LENGTH;
        book.add(kind, unit("mV/A/m", "mV/A/m", "0.001"), "mV/A/m, mV/Am");
        book.add(kind, unit("V/A/m", "V/A/m", "1"), "V/A/m, V/Am");
    }

    private void ohmsPer(final String length, final BigDecimal metres, final String endings) {
        final BigDecimal factor = BigDecimal.ONE.divide(metres, MathContext.DECIMAL128);
        book.addOhms(
                Dimension.RESISTANCE_PER_LENGTH,
                List.of(NONE, MICRO, MILLI, MEGA),
                unit("ohm/" + length, "Ω/" + length, factor),
                endings);
    }

    private void temperature() {
        final Dimension kind = Dimension.TEMPERATURE;
        final Unit celsius = unit("degC", "°C", "degrees Celsius", "1");
        final BigDecimal ratio =
                BigDecimal.valueOf(5).divide(BigDecimal.valueOf(9), MathContext.DECIMAL128);
        final BigDecimal zero = BigDecimal.valueOf(-32).multiply(ratio);
        final Unit fahrenheit = new Unit("degF", "°F", "degrees Fahrenheit", ratio, zero);
        final Unit kelvin =
                new Unit("K", "K", "kelvins", BigDecimal.ONE, new BigDecimal("-273.15"));
        book.add(kind, celsius, "C, degC, celsius, degrees C, degrees celsius, centigrade");
        book.add(kind, fahrenheit, "F, degF, fahrenheit, degrees F, degrees fahrenheit");
        book.add(kind, kelvin, "kelvin, kelvins");
        book.of(kind).addExact("K", kelvin);
        for (final String bare : List.of("deg", "degree", "degrees")) {
            book.of(kind).addAnyCase(bare, celsius);
            book.of(kind).addAnyCase(bare, fahrenheit);
        }
    }

    private void other() {
        book.add(Dimension.GAUGE, unit("AWG", "wire gauge", "1"), "AWG, ga, gauge");
        book.add(
                Dimension.ADIABATIC_K,
                unit("A s^0.5/mm2", "A·√s/mm²", "A·√s/mm²", "1e6"),
                "A s^0.5/mm2, A√s/mm2, A sqrt(s)/mm2, A s^1/2/mm2, A s^½/mm2");
    }
}
