package wireworthy.window.check;

import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Part;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Vehicle;

/**
 * A thing within a vehicle: how to read it, and the vehicle with another in its place.
 *
 * @param <T> what it is
 */
record Lens<T>(Function<Vehicle, T> read, BiFunction<Vehicle, T, Vehicle> with) {
    static final Lens<String> NAME = new Lens<>(Vehicle::name, Vehicle::renamed);
    static final Lens<String> NOTES = new Lens<>(Vehicle::notes, Vehicle::withNotes);
    static final Lens<Part> SUPPLY = new Lens<>(Vehicle::supply, Vehicle::withSupply);
    static final Lens<Part> MAIN = new Lens<>(Vehicle::main, Vehicle::withMain);

    /** A circuit by its index. */
    static Lens<Circuit> circuit(final int index) {
        return new Lens<>(
                vehicle -> vehicle.circuits().get(index),
                (vehicle, circuit) -> vehicle.withCircuit(index, circuit));
    }

    /** What is known of a circuit's cable and fuse. */
    static Lens<Part> part(final int circuit) {
        return circuit(circuit).then(Circuit::part, Circuit::withPart);
    }

    /** A load by its index and that of its circuit. */
    static Lens<Load> load(final int circuit, final int index) {
        return circuit(circuit)
                .then(it -> it.loads().get(index), (it, load) -> it.withLoad(index, load));
    }

    /** A stretch of a circuit's cable by its index. */
    static Lens<Stretch> stretch(final int circuit, final int index) {
        return circuit(circuit)
                .then(it -> it.stretches().get(index), (it, one) -> it.withStretch(index, one));
    }

    /** An entry of a load. */
    static Lens<String> entry(final Lens<Load> load, final LoadEntry entry) {
        return load.then(it -> it.entries().text(entry), (it, text) -> it.with(entry, text));
    }

    /** What is given of a part. */
    static Lens<String> given(final Lens<Part> part, final Quantity quantity) {
        return part.then(
                it -> it.given().text(quantity), (it, text) -> it.withGiven(quantity, text));
    }

    /** The builder's own figure of a part. */
    static Lens<String> own(final Lens<Part> part, final Quantity quantity) {
        return part.then(
                it -> it.answers().text(quantity), (it, text) -> it.withAnswer(quantity, text));
    }

    /** A change of this thing as one of the vehicle. */
    UnaryOperator<Vehicle> changing(final UnaryOperator<T> how) {
        return vehicle -> with.apply(vehicle, how.apply(read.apply(vehicle)));
    }

    /** A thing within this one. */
    <U> Lens<U> then(final Function<T, U> inner, final BiFunction<T, U, T> changed) {
        return new Lens<>(
                vehicle -> inner.apply(read.apply(vehicle)),
                (vehicle, other) -> with.apply(vehicle, changed.apply(read.apply(vehicle), other)));
    }
}
