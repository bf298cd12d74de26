package wireworthy.window.figures;

import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import wireworthy.lessons.Handle;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;

/** A number that stands at one of its stops, counted from 0. */
final class Knob {
    private static final int DIGITS = 4;
    private static final double HAIR = 1e-6;

    private final String label;
    private final Quantity quantity;
    private final IntToDoubleFunction values;
    private final int last;
    private final IntegerProperty stop;
    private final BooleanProperty offered = new SimpleBooleanProperty(true);

    private Knob(
            final String label,
            final Quantity quantity,
            final IntToDoubleFunction values,
            final int last,
            final int start) {
        this.label = label;
        this.quantity = quantity;
        this.values = values;
        this.last = last;
        this.stop = new SimpleIntegerProperty(start);
    }

    /**
     * The knob of a handle.
     *
     * @throws IllegalArgumentException if the handle holds no number
     */
    static Knob of(final String label, final Handle handle) {
        if (handle instanceof Handle.Range range) {
            return range(label, range);
        }
        if (handle instanceof Handle.Choice choice) {
            return choice(label, choice);
        }
        if (handle instanceof Handle.Fixed fixed) {
            return new Knob(label, fixed.quantity(), stop -> fixed.value(), 0, 0);
        }
        throw new IllegalArgumentException(label + " is no number: " + handle);
    }

    private static Knob range(final String label, final Handle.Range range) {
        final int last = (int) Math.floor((range.to() - range.from()) / range.step() + HAIR);
        final int start = (int) Math.round((range.start() - range.from()) / range.step());
        return new Knob(
                label,
                range.quantity(),
                stop -> range.from() + stop * range.step(),
                last,
                Math.min(start, last));
    }

    private static Knob choice(final String label, final Handle.Choice choice) {
        final List<Double> values = choice.values();
        return new Knob(
                label,
                choice.quantity(),
                values::get,
                values.size() - 1,
                values.indexOf(choice.start()));
    }

    /** What it is called in the figure. */
    String label() {
        return label;
    }

    Quantity quantity() {
        return quantity;
    }

    /** Where it stands, from 0 to {@link #last}. */
    IntegerProperty stop() {
        return stop;
    }

    int last() {
        return last;
    }

    /** Whether it has more than one stop. */
    boolean moves() {
        return last > 0;
    }

    /** Whether it can be moved as things stand; else it is not seen. */
    BooleanProperty offered() {
        return offered;
    }

    /** Moves to the stop nearest to a value, SI. */
    void moveTo(final double si) {
        IntStream.rangeClosed(0, last)
                .boxed()
                .min(Comparator.comparingDouble(each -> Math.abs(at(each) - si)))
                .ifPresent(stop::set);
    }

    /** SI, where it stands. */
    double value() {
        return at(stop.get());
    }

    /** SI, at a stop. */
    double at(final int stopNumber) {
        return values.applyAsDouble(stopNumber);
    }

    /** The greatest of its values, SI. */
    double greatest() {
        return Math.max(at(0), at(last));
    }

    /** The smallest of its values, SI. */
    double smallest() {
        return Math.min(at(0), at(last));
    }

    /** Its value with the unit, where it stands. */
    String text() {
        return text(value());
    }

    /** A value of its kind with the unit. */
    String text(final double si) {
        return FigureText.of(si, quantity.dimension(), DIGITS);
    }
}
