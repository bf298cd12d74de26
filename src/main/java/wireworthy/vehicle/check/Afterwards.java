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

/**
 * Volts measured at a load beside those predicted, and what a difference may mean. One figure never
 * tells which cause it is; each is said with the size it would have to have.
 */
final class Afterwards {
    /** As near as a handheld meter and a battery at rest agree: common practice, no source. */
    private static final double NEAR_VOLTS = 0.05;

    private static final double NEAR_SHARE = 0.15;

    private final Sums sums;
    private final double predicted;
    private final double measured;

    private Afterwards(final Sums sums, final double predicted, final double measured) {
        this.sums = sums;
        this.predicted = predicted;
        this.measured = measured;
    }

    /**
     * What was measured at a load; empty where nothing was, or nothing is predicted.
     *
     * @param sums of a circuit with one cable; in a network only the difference is told
     */
    static Optional<CheckedLoad.Comparison> of(
            final Load load, final Sums sums, final OptionalDouble predicted) {
        final Understood typed =
                Understood.of(
                        LoadEntry.MEASURED.quantity(), load.entries().text(LoadEntry.MEASURED));
        return typed instanceof Understood.Figure figure && predicted.isPresent()
                ? Optional.of(
                        new Afterwards(sums, predicted.getAsDouble(), figure.read().value())
                                .comparison())
                : Optional.empty();
    }

    private CheckedLoad.Comparison comparison() {
        return new CheckedLoad.Comparison(measured, measured - predicted, text());
    }

    private String text() {
        final double missing = predicted - measured;
        if (Math.abs(missing) <= near()) {
            return "As predicted, as near as such a measurement goes.";
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
        return volts(missing)
                + " less arrive than predicted. It may be a loose, dirty or badly crimped joint"
                + joint(missing)
                + larger(missing)
                + " Or the battery itself stood lower: measure there at the same moment. One figure"
                + " can't tell which: with everything on, measure across each joint, fuse holder"
                + " and switch in turn. A joint that grows warm can start a fire: switch off first,"
                + " then make it anew.";
    }

    /** Not in a network: which current goes through the joint is not known there. */
    private String joint(final double missing) {
        return drop().isEmpty() ? "" : joints(missing);
    }

    private String joints(final double missing) {
        return sums.value(CIRCUIT_CURRENT).stream()
                .mapToObj(
                        amps ->
                                " (one alone would have "
                                        + FigureText.of(missing / amps, Dimension.RESISTANCE, 2)
                                        + " and be heated by "
                                        + FigureText.of(missing * amps, Dimension.POWER, 2)
                                        + ")")
                .findFirst()
                .orElse("");
    }

    /** How long, thin or loaded the cable would have to be to explain the difference. */
    private String larger(final double missing) {
        return factor(missing)
                .map(
                        times ->
                                sized("; a longer run", ONE_WAY_LENGTH, times)
                                        + sized("; a thinner cable", SECTION, 1 / times)
                                        + sized("; loads that draw more", CIRCUIT_CURRENT, times)
                                        + ".")
                .orElse("; a longer run, a thinner cable or loads that draw more than planned.");
    }

    private String more(final double above) {
        final String causes =
                factor(-above)
                        .map(
                                times ->
                                        sized("a shorter run", ONE_WAY_LENGTH, times)
                                                + sized("; a thicker cable", SECTION, 1 / times)
                                                + sized(
                                                        "; loads that draw less",
                                                        CIRCUIT_CURRENT,
                                                        times))
                        .orElse("a load that was off or draws less than planned");
        return volts(above)
                + " more arrive than predicted. It may be "
                + causes
                + ". Or the battery stood higher, as while it is charged: measure there at the same"
                + " moment, with everything of this circuit on.";
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
                                cause
                                        + " ("
                                        + FigureText.of(value * times, quantity.dimension(), 2)
                                        + " rather than "
                                        + FigureText.of(value, quantity.dimension())
                                        + ")")
                .findFirst()
                .orElse(cause);
    }

    private static String volts(final double volts) {
        return FigureText.of(volts, Dimension.VOLTAGE, 2);
    }
}
