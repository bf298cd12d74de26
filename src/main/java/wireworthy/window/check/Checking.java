package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.marking.Mark;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedPart;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.vehicle.check.FuseWindow;
import wireworthy.vehicle.check.VehicleChecker;
import wireworthy.window.Background;

/** The check of the open vehicle, away from the window's thread; of several the last one counts. */
final class Checking {
    private final VehicleChecker checker = new VehicleChecker();
    private final AtomicLong asked = new AtomicLong();
    private final AtomicBoolean another = new AtomicBoolean();
    private final Background background;
    private final ReadOnlyObjectWrapper<Optional<CheckedVehicle>> done =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    Checking(final Background background) {
        this.background = background;
    }

    /** Checks a vehicle; what was asked before and is not done yet is left. */
    void check(final Vehicle vehicle) {
        final long number = asked.incrementAndGet();
        background.run(
                () -> checked(number, vehicle), it -> it.ifPresent(all -> show(number, all)));
    }

    private Optional<CheckedVehicle> checked(final long number, final Vehicle vehicle) {
        if (number != asked.get()) {
            return Optional.empty();
        }
        if (another.getAndSet(false)) {
            checker.forget();
        }
        return Optional.of(checker.check(vehicle));
    }

    private void show(final long number, final CheckedVehicle checked) {
        if (number == asked.get()) {
            done.set(Optional.of(checked));
        }
    }

    /** Forgets what was checked: another vehicle is open. */
    void forget() {
        done.set(Optional.empty());
        another.set(true);
    }

    /** A check to be done later, away from the window's thread. */
    Supplier<CheckedVehicle> later(final Vehicle vehicle) {
        return () -> checker.check(vehicle);
    }

    /** What was checked last; for a moment it may be the vehicle before the last change. */
    ReadOnlyObjectProperty<Optional<CheckedVehicle>> done() {
        return done.getReadOnlyProperty();
    }

    /** A circuit as checked; empty while it is not. */
    Optional<CheckedCircuit> circuit(final int index) {
        return done.get()
                .filter(it -> index < it.circuits().size())
                .map(it -> it.circuits().get(index));
    }

    /** The supply or the main fuse as checked; empty for other spots. */
    Optional<CheckedPart> part(final Spot spot) {
        return done.get()
                .filter(it -> spot.equals(Spot.Fixed.SUPPLY) || spot.equals(Spot.Fixed.MAIN))
                .map(it -> spot.equals(Spot.Fixed.SUPPLY) ? it.supply() : it.main());
    }

    /** Which fuses fit at a spot; empty where none sits there. */
    Optional<FuseWindow> fuse(final Spot spot) {
        return spot instanceof Spot.OfCircuit of
                ? circuit(of.index()).map(CheckedCircuit::fuse)
                : done.get()
                        .filter(any -> spot.equals(Spot.Fixed.MAIN))
                        .map(CheckedVehicle::mainFuse);
    }

    /** How a spot stands; empty for the whole, and while it is not checked. */
    Optional<State> state(final Spot spot) {
        return spot instanceof Spot.OfCircuit of
                ? circuit(of.index()).map(State::of)
                : part(spot).map(State::of);
    }

    /** What there is to say at the fields of a spot. */
    List<FieldNote> notes(final Spot spot) {
        return spot instanceof Spot.OfCircuit of
                ? circuit(of.index()).map(CheckedCircuit::notes).orElse(List.of())
                : part(spot).map(CheckedPart::notes).orElse(List.of());
    }

    /** The marks of the builder's own figures of a spot. */
    List<Mark> marks(final Spot spot) {
        return spot instanceof Spot.OfCircuit of
                ? circuit(of.index()).map(CheckedCircuit::marks).orElse(List.of())
                : part(spot).map(CheckedPart::marks).orElse(List.of());
    }
}
