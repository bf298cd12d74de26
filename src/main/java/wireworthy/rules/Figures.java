package wireworthy.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wireworthy.texts.Language;
import wireworthy.texts.TextBundle;

/**
 * Reads a figure as people type it: "250 mA", "7 ft 6 in", "2/0 AWG", "1,5 mm²". It never guesses:
 * what has two meanings is asked about, what has none is refused with words on what to write.
 */
public final class Figures {
    private static final TextBundle TEXTS = new TextBundle("typed");

    private static final int LEAST_FIGURES_SHOWN = 4;
    private static final int GAUGE_FIGURES = 3;

    private final String typed;
    private final Dimension dimension;
    private final boolean unitRequired;

    private Figures(final String typed, final Dimension dimension, final boolean unitRequired) {
        this.typed = typed;
        this.dimension = dimension;
        this.unitRequired = unitRequired;
    }

    /**
     * Reads a figure of the given dimension; never throws. Without a unit the field unit is taken,
     * unless a unit is required; plain numbers and gauges need none.
     */
    public static Reading read(
            final String typed, final Dimension dimension, final boolean unitRequired) {
        final Figures figures = new Figures(typed, dimension, unitRequired);
        try {
            return figures.read();
        } catch (final UnreadableFigure e) {
            return figures.refused(e.problem());
        }
    }

    private Reading refused(final String problem) {
        final FieldUnit wanted = FieldUnit.of(dimension);
        return new Reading.Unreadable(
                TEXTS.of(
                        "refused",
                        "typed",
                        Typed.quoted(typed),
                        "problem",
                        problem,
                        "unit",
                        wanted.unit().words(),
                        "example",
                        Language.inUse().number(wanted.example())));
    }

    private Reading read() throws UnreadableFigure {
        if (typed.length() > Typed.LONGEST) {
            throw new UnreadableFigure(TEXTS.of("too-long"));
        }
        final String plain = Typed.withoutLeadIn(Typed.plain(typed));
        if (plain.isEmpty()) {
            return new Reading.Unreadable(
                    TEXTS.of(
                            "nothing",
                            "unit",
                            FieldUnit.of(dimension).unit().words(),
                            "example",
                            Language.inUse().number(FieldUnit.of(dimension).example())));
        }
        return switch (dimension) {
            case NAME, LIST ->
                    new Reading.Unreadable(TEXTS.of("names", "typed", Typed.quoted(typed)));
            case AREA -> area(plain);
            case GAUGE -> gauge(plain);
            case FACTOR, COUNT -> number(withoutTimes(plain));
            default -> number(plain);
        };
    }

    private static String withoutTimes(final String plain) {
        final boolean times = plain.startsWith("x") || plain.startsWith("X");
        return times ? plain.substring(1).strip() : plain;
    }

    private Reading gauge(final String plain) throws UnreadableFigure {
        final OptionalInt gauge = Gauge.any(plain);
        if (gauge.isPresent()) {
            final int n = gauge.getAsInt();
            final String text = FigureText.of(n, dimension);
            final boolean marked = Gauge.marked(plain).isPresent();
            return new Reading.Read(n, "AWG", text, 1, n >= 10 ? 2 : 1, marked);
        }
        number(plain);
        throw notAGauge();
    }

    private Reading area(final String plain) throws UnreadableFigure {
        final OptionalInt gauge = Gauge.marked(plain);
        if (gauge.isEmpty()) {
            return number(plain);
        }
        final double area = Gauge.area(gauge.getAsInt());
        final String shown = FigureText.of(area, dimension, GAUGE_FIGURES);
        final double step = Math.pow(10, Math.floor(Math.log10(area)) - GAUGE_FIGURES + 1);
        return new Reading.Read(
                area,
                "AWG",
                "%s AWG (%s)".formatted(Gauge.text(gauge.getAsInt()), shown),
                step,
                GAUGE_FIGURES,
                true);
    }

    private static UnreadableFigure notAGauge() {
        return new UnreadableFigure(TEXTS.of("no-gauge"));
    }

    private Reading number(final String plain) throws UnreadableFigure {
        final NumberScanner.Found found = NumberScanner.scan(plain, 0);
        final String rest = plain.substring(found.end()).strip();
        if (rest.isEmpty()) {
            return joined(found.meanings(), List.of(unitLeftOut()), false);
        }
        final List<Unit> units = Units.meanings(dimension, rest);
        if (!units.isEmpty()) {
            return joined(found.meanings(), units, true);
        }
        final Optional<Reading.Read> mixed = MixedUnits.read(plain, dimension);
        if (mixed.isPresent()) {
            return mixed.get();
        }
        throw wrongUnit(rest);
    }

    private Unit unitLeftOut() throws UnreadableFigure {
        if (unitRequired && !dimension.unit().isEmpty() && dimension != Dimension.GAUGE) {
            throw new UnreadableFigure(TEXTS.of("no-unit"));
        }
        return FieldUnit.of(dimension).unit();
    }

    private UnreadableFigure wrongUnit(final String rest) {
        final Optional<Unit> other = Units.ofAnyKind(rest);
        if (other.isEmpty()) {
            return new UnreadableFigure(
                    rest.chars().anyMatch(c -> NumberScanner.startsNumber((char) c))
                            ? TEXTS.of("no-figure")
                            : TEXTS.of("unknown-unit", "unit", Typed.quoted(rest)));
        }
        return other.get().word().equals("AWG") && dimension == Dimension.AREA
                ? notAGauge()
                : new UnreadableFigure(TEXTS.of("is-in", "unit", other.get().words()));
    }

    private Reading joined(
            final List<Numeral> numbers, final List<Unit> units, final boolean unitTyped)
            throws UnreadableFigure {
        final List<Reading.Read> reads = new ArrayList<>(1);
        for (final Numeral number : numbers) {
            for (final Unit unit : units) {
                if (fits(number)) {
                    reads.add(read(number, unit, unitTyped));
                }
            }
        }
        return switch (reads.size()) {
            case 0 -> throw new UnreadableFigure(TEXTS.of("no-whole"));
            case 1 -> reads.get(0);
            case 2 -> asked(reads.get(0), reads.get(1));
            default -> throw new UnreadableFigure(TEXTS.of("several"));
        };
    }

    private boolean fits(final Numeral number) {
        return dimension != Dimension.COUNT || (number.isWhole() && number.value().signum() >= 0);
    }

    private Reading asked(final Reading.Read first, final Reading.Read second) {
        return new Reading.Unclear(
                first,
                second,
                TEXTS.of(
                        "unclear",
                        "typed",
                        Typed.quoted(typed),
                        "first",
                        first.text(),
                        "second",
                        second.text()));
    }

    private Reading.Read read(final Numeral number, final Unit unit, final boolean unitTyped) {
        final BigDecimal si = unit.si(number.value());
        return new Reading.Read(
                si.doubleValue(),
                unit.word(),
                text(number, unit, si),
                number.step().multiply(unit.factor()).doubleValue(),
                number.digits(),
                unitTyped);
    }

    private String text(final Numeral number, final Unit unit, final BigDecimal si) {
        final String typedText =
                unit.shown().isEmpty() ? digits(number) : digits(number) + ' ' + unit.shown();
        if (unit.word().equals(dimension.unit())) {
            return typedText;
        }
        final int digits = Math.max(LEAST_FIGURES_SHOWN, Math.min(number.digits(), 12));
        return typedText + " (" + FigureText.inFieldUnit(si.doubleValue(), dimension, digits) + ')';
    }

    private static String digits(final Numeral number) {
        return Language.inUse().number(number.text());
    }
}
