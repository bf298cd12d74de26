package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Understood;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/**
 * Volts measured at a load beside those predicted, and what a difference may mean. One figure never
 * tells which cause it is; each is said with the size it would have to have.
 */
final class Afterwards {
    /** As near as a handheld meter and a battery at rest agree: common practice, no source. */
    private static final double NEAR_VOLTS = 0.05;

    private static final double NEAR_SHARE = 0.15;

    private final String name;
    private final Sums sums;
    private final double predicted;
    private final double measured;

    private Afterwards(
            final String name, final Sums sums, final double predicted, final double measured) {
        this.name = name;
        this.sums = sums;
        this.predicted = predicted;
        this.measured = measured;
    }

    /**
     * What was measured at a load; empty where nothing was, or nothing is predicted.
     *
     * @param name of the load as it is told
     * @param sums of a circuit with one cable; in a network only the difference is told
     */
    static Optional<CheckedLoad.Comparison> of(
            final String name, final Load load, final Sums sums, final OptionalDouble predicted) {
        final Understood typed =
                Understood.of(
                        LoadEntry.MEASURED.quantity(), load.entries().text(LoadEntry.MEASURED));
        return typed instanceof Understood.Figure figure && predicted.isPresent()
                ? Optional.of(
                        new Afterwards(name, sums, predicted.getAsDouble(), figure.read().value())
                                .comparison())
                : Optional.empty();
    }

    private CheckedLoad.Comparison comparison() {
        final double missing = predicted - measured;
        return new CheckedLoad.Comparison(
                measured,
                -missing,
                text(),
                missing > near() ? Optional.of(caution(missing)) : Optional.empty());
    }

    private Caution caution(final double missing) {
        return new Caution(
                "less-arrives",
                Danger.LESS_ARRIVES,
                Said.of(
                        "less.caution",
                        "load",
                        name,
                        "measured",
                        FigureText.of(measured, Dimension.VOLTAGE),
                        "volts",
                        volts(missing),
                        "joint",
                        joint(missing)));
    }

    private String text() {
        final double missing = predicted - measured;
        if (Math.abs(missing) <= near()) {
            return Said.of("as-predicted");
        }
        return missing > 0 ? less(missing) : more(-missing);
    }

    private double near() {
        return Math.max(NEAR_VOLTS, NEAR_SHARE * drop().orElse(0));
    }

    private OptionalDouble drop() {
        return sums.value(DROP);
    }

    private String less(final double missing) {
        return Said.of(
                "less",
                "volts",
                volts(missing),
                "joint",
                joint(missing),
                "causes",
                larger(missing));
    }

    /** Not in a network: which current goes through the joint is not known there. */
    private String joint(final double missing) {
        return drop().isEmpty() ? "" : joints(missing);
    }

    private String joints(final double missing) {
        return sums.value(CIRCUIT_CURRENT).stream()
                .mapToObj(
                        amps ->
                                Said.of(
                                        "joint",
                                        "ohms",
                                        FigureText.of(missing / amps, Dimension.RESISTANCE, 2),
                                        "watts",
                                        FigureText.of(missing * amps, Dimension.POWER, 2)))
                .findFirst()
                .orElse("");
    }

    /** How long, thin or loaded the cable would have to be to explain the difference. */
    private String larger(final double missing) {
        return factor(missing)
                .map(
                        times ->
                                causes(
                                        sized("longer-run", ONE_WAY_LENGTH, times),
                                        sized("thinner-cable", SECTION, 1 / times),
                                        sized("draw-more", CIRCUIT_CURRENT, times)))
                .orElse(Said.of("less.causes"));
    }

    private String more(final double above) {
        final String causes =
                factor(-above)
                        .map(
                                times ->
                                        causes(
                                                sized("shorter-run", ONE_WAY_LENGTH, times),
                                                sized("thicker-cable", SECTION, 1 / times),
                                                sized("draw-less", CIRCUIT_CURRENT, times)))
                        .orElse(Said.of("more.cause"));
        return Said.of("more", "volts", volts(above), "causes", causes);
    }

    /** How many times the predicted drop there is; empty where no one cable explains it. */
    private Optional<Double> factor(final double missing) {
        final double times = 1 + missing / drop().orElse(Double.NaN);
        return times > 0 ? Optional.of(times) : Optional.empty();
    }

    private String sized(final String cause, final Quantity quantity, final double times) {
        return sums.value(quantity).stream()
                .mapToObj(
                        value ->
                                Said.of(
                                        "rather",
                                        "cause",
                                        Said.of(cause),
                                        "value",
                                        FigureText.of(value * times, quantity.dimension(), 2),
                                        "planned",
                                        FigureText.of(value, quantity.dimension())))
                .findFirst()
                .orElse(Said.of(cause));
    }

    private static String causes(final String... causes) {
        return String.join("; ", causes);
    }

    private static String volts(final double volts) {
        return FigureText.of(volts, Dimension.VOLTAGE, 2);
    }
}
