package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Unit, size and direction of a figure that no known slip gives. */
final class Checks {
    private static final double NEAR = 0.02;
    private static final double ABSURD = 1e6;
    private static final double OF_UNIT = 0.005;

    /** Other usual units of a dimension, by the number of them that make one field unit. */
    private static final Map<Dimension, Map<String, Double>> UNITS =
            Map.of(
                    Dimension.TIME, Map.of("minutes", 60.0, "seconds", 3600.0),
                    Dimension.LENGTH, Map.of("centimetres", 100.0, "feet", 1 / 0.3048),
                    Dimension.VOLTAGE, Map.of("millivolts", 1000.0),
                    Dimension.CURRENT, Map.of("milliamps", 1000.0),
                    Dimension.POWER, Map.of("milliwatts", 1000.0, "kilowatts", 0.001),
                    Dimension.RESISTANCE, Map.of("milliohms", 1000.0),
                    Dimension.ENERGY, Map.of("kilowatt-hours", 0.001),
                    Dimension.SHARE, Map.of("whole-parts", 0.01));

    private final Worked worked;
    private final Ref ref;
    private final Quantity quantity;
    private final Reading.Read read;
    private final double value;
    private final double right;

    private Checks(
            final Worked worked, final Ref ref, final Reading.Read read, final double right) {
        this.worked = worked;
        this.ref = ref;
        this.quantity = ref.quantity();
        this.read = read;
        this.value = read.value();
        this.right = right;
    }

    /** The check that says most; empty where none speaks. */
    static Optional<Check> first(
            final Worked worked, final Ref ref, final Reading.Read read, final double right) {
        final Checks checks = new Checks(worked, ref, read, right);
        return Stream.<Supplier<Optional<Check>>>of(
                        checks::choice,
                        checks::otherVoltage,
                        checks::unit,
                        checks::powerOfTen,
                        checks::possible,
                        checks::otherLine,
                        checks::absurd,
                        () -> Directions.check(worked, ref, read, right))
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** How many times too large or too small, always above 1. */
    static double timesOff(final double value, final double right) {
        final double ratio = Math.abs(value / right);
        return Math.max(ratio, 1 / ratio);
    }

    private Optional<Check> unit() {
        if (read.unitTyped() || quantity.chosen()) {
            return Optional.empty();
        }
        return UNITS.getOrDefault(quantity.dimension(), Map.of()).entrySet().stream()
                .filter(unit -> near(value / unit.getValue(), OF_UNIT))
                .findFirst()
                .map(unit -> Check.ofUnit(unit.getKey()));
    }

    /** Watts divided all through by the voltage of another system. */
    private Optional<Check> otherVoltage() {
        return OtherVoltage.of(worked, ref, read)
                .map(
                        used ->
                                Check.of(
                                                OtherVoltage.byVolts(ref)
                                                        ? "other-supply"
                                                        : "other-voltage")
                                        .with("{used}", text(SUPPLY_VOLTAGE, used))
                                        .with("{volts}", text(SUPPLY_VOLTAGE, at(SUPPLY_VOLTAGE))));
    }

    private boolean near(final double shown, final double share) {
        return Math.abs(shown - right) <= share * Math.abs(right);
    }

    private Optional<Check> powerOfTen() {
        final int power = (int) Math.rint(Math.log10(Math.abs(value / right)));
        if (quantity.chosen() || power == 0 || Math.abs(power) > 3) {
            return Optional.empty();
        }
        final String way = power > 0 ? "large." : "small.";
        return near(value / Math.pow(10, power), NEAR)
                ? Optional.of(Check.of("too-" + way + Math.abs(power)))
                : Optional.empty();
    }

    private Optional<Check> possible() {
        return switch (quantity) {
            case DROP -> above("drop-above-supply", SUPPLY_VOLTAGE);
            case VOLTAGE_AT_LOAD -> above("load-above-supply", SUPPLY_VOLTAGE);
            case DROP_PERCENT -> when(value > 1, Check.of("more-than-all"));
            case EFFICIENCY -> when(value > 1, Check.of("more-out-than-in"));
            case SUPPLY_CURRENT -> lossless();
            case LOAD_POWER -> poweredByMore();
            case CIRCUIT_CURRENT -> lessThanOneLoad();
            case PARALLEL_RESISTANCE -> moreThanOneResistance();
            default -> Optional.empty();
        };
    }

    private static Optional<Check> when(final boolean so, final Check check) {
        return so ? Optional.of(check) : Optional.empty();
    }

    private Optional<Check> above(final String key, final Quantity limit) {
        final OptionalDouble most = worked.value(limit);
        return most.isPresent() && value > most.getAsDouble()
                ? Optional.of(Check.of(key).with("{limit}", text(limit, most.getAsDouble())))
                : Optional.empty();
    }

    private double at(final Quantity wanted) {
        return worked.value(new Ref(wanted, ref.subject()))
                .orElse(worked.value(wanted).orElse(Double.NaN));
    }

    private Optional<Check> lossless() {
        final double least = at(LOAD_POWER) / at(SUPPLY_VOLTAGE);
        return value < least * (1 - NEAR)
                ? Optional.of(Check.of("less-than-lossless").with("{limit}", text(quantity, least)))
                : Optional.empty();
    }

    private Optional<Check> poweredByMore() {
        final double most = at(SUPPLY_CURRENT) * at(SUPPLY_VOLTAGE);
        return value > most * (1 + NEAR)
                ? Optional.of(Check.of("more-than-input").with("{limit}", text(quantity, most)))
                : Optional.empty();
    }

    private Stream<Ref> ofLoads(final Quantity wanted) {
        return worked.refs(wanted).stream().filter(each -> each.subject() != Ref.CIRCUIT);
    }

    private double figure(final Ref each) {
        return worked.value(each).orElse(Double.NaN);
    }

    private Optional<Check> lessThanOneLoad() {
        return worked.question().loads().size() < 2 ? Optional.empty() : belowOne();
    }

    private Optional<Check> belowOne() {
        return Stream.concat(ofLoads(LOAD_CURRENT), ofLoads(SUPPLY_CURRENT))
                .filter(each -> figure(each) > value * (1 + NEAR))
                .findFirst()
                .map(each -> ofOne("less-than-one-load", each));
    }

    private Optional<Check> moreThanOneResistance() {
        return ofLoads(RESISTANCE)
                .filter(each -> figure(each) < value * (1 - NEAR))
                .findFirst()
                .map(each -> ofOne("more-than-one-resistance", each));
    }

    private Check ofOne(final String key, final Ref each) {
        return Check.of(key)
                .with("{limit}", text(each.quantity(), figure(each)))
                .with("{load}", worked.question().subject(each));
    }

    private Optional<Check> absurd() {
        return when(timesOff(value, right) > ABSURD, Check.of("absurd"));
    }

    private Optional<Check> choice() {
        return quantity.chosen() ? Choices.check(worked, ref, read) : Optional.empty();
    }

    /** The number of another line of the working, in its own unit. */
    private Optional<Check> otherLine() {
        return worked.wayTo(ref).stream()
                .filter(step -> SlipFigures.told(step) && !quantity.chosen())
                .map(step -> step.direction().output())
                .filter(line -> line.quantity().dimension() != quantity.dimension())
                .filter(line -> sameNumber(line))
                .findFirst()
                .map(
                        line ->
                                Check.of(otherLine(line))
                                        .with("{line}", line.quantity().words())
                                        .with("{limit}", text(line.quantity(), figure(line))));
    }

    private String otherLine(final Ref line) {
        return quantity == DROP_PERCENT && line.quantity() == DROP
                ? "drop-as-percent"
                : "other-line";
    }

    private boolean sameNumber(final Ref line) {
        final double unit = quantity.dimension().scale();
        final double other = figure(line) / line.quantity().dimension().scale();
        return read.significantDigits() >= 2 && Fit.holds(ref, read, other * unit);
    }

    static String text(final Quantity quantity, final double value) {
        return Telling.exact(quantity, value);
    }
}
