package wireworthy.window.check;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.record.SumsInUse;
import wireworthy.record.WireSizes;
import wireworthy.vehicle.CablePlaces;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.History;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.VehicleFile;
import wireworthy.vehicle.VehicleRead;
import wireworthy.window.Background;

/** The vehicle that is open: what is typed, checked and kept at each change. No control. */
final class VehicleModel implements AutoCloseable {
    private final Shelf shelf;
    private final Supplier<SumsInUse> inUse;
    private final Background background;
    private final Checking checking;
    private final Keeper keeper;
    private final ReadOnlyObjectWrapper<Vehicle> vehicle;
    private final ReadOnlyObjectWrapper<Spot> chosen =
            new ReadOnlyObjectWrapper<>(Spot.Fixed.WHOLE);
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
    private final ReadOnlyIntegerWrapper opened = new ReadOnlyIntegerWrapper();
    private final Map<String, Typed> typed = new HashMap<>();
    private History history;

    /** An entry, and where one typed into it: some stand on several forms. */
    private record Typed(Entry entry, Spot at) {}

    /**
     * A vehicle of which nothing is known yet.
     *
     * @param inUse what a new circuit goes by
     */
    VehicleModel(final Shelf shelf, final Supplier<SumsInUse> inUse, final Background background) {
        this.inUse = inUse;
        this.shelf = shelf;
        this.background = background;
        checking = new Checking(background);
        keeper = new Keeper(shelf, background);
        history = History.of(Vehicle.named(newName()));
        vehicle = new ReadOnlyObjectWrapper<>(history.vehicle());
        checking.check(now());
    }

    /** Opens the vehicle that was open last, where there is one. */
    void openLast() {
        shelf.recent().stream().findFirst().ifPresent(this::open);
    }

    /** Begins another vehicle; it gets its file with its first change. */
    void begin() {
        // What is open has to lie in its file before a name is looked for that is free.
        keeper.close();
        open(Vehicle.named(newName()), Optional.empty());
    }

    /** Numbered where there is one of that name already, so that their files can be told apart. */
    private String newName() {
        return shelf.free(
                number ->
                        number == 1
                                ? CheckTexts.of("new-name")
                                : CheckTexts.of("new-name.number", "number", number));
    }

    /** Opens the example; what is changed of it is kept as a copy. */
    void openExample() {
        open(Heron.vehicle(), Optional.empty());
        keeper.tell(CheckTexts.of("example"));
    }

    /** Opens a file; one that can't be read is left as it is, and said. */
    void open(final Path file) {
        background.run(() -> VehicleFile.read(file), read -> opened(file, read));
    }

    private void opened(final Path file, final VehicleRead read) {
        if (read instanceof VehicleRead.Whole whole) {
            open(whole.vehicle(), Optional.of(file));
        } else if (read instanceof VehicleRead.Refused refused) {
            refuse(refused.text());
        }
    }

    /** Says that a file could not be read. */
    void refuse(final String why) {
        trouble.set(why);
    }

    private void open(final Vehicle other, final Optional<Path> file) {
        keeper.follow(file);
        trouble.set("");
        checking.forget();
        chosen.set(Spot.Fixed.WHOLE);
        show(History.of(other));
        told.set("");
        opened.set(opened.get() + 1);
    }

    /** Says what was done, until another part is chosen. */
    void tell(final String text) {
        told.set(text);
    }

    /**
     * Changes the vehicle.
     *
     * @param what path of the entry that is changed; changes of one entry are undone together
     */
    void change(final String what, final UnaryOperator<Vehicle> how) {
        told.set("");
        show(history.changed(how.apply(now()), what));
        keeper.keep(now());
    }

    /** Changes an entry. */
    void change(final Entry entry, final UnaryOperator<Vehicle> how) {
        typed.put(entry.path(), new Typed(entry, chosen.get()));
        change(entry.path(), how);
    }

    /** The field that was typed in has been left: the next change is undone by itself. */
    void settled() {
        history = history.settled();
        keeper.callAs(now().name());
    }

    /** Takes back the last step, and gives the path of the entry that was changed by it. */
    Optional<String> undo() {
        return history.undone().flatMap(it -> goTo(it, Undoing.UNDONE, history.now().change()));
    }

    /** Does again what was undone last, and gives the path of the entry that was changed by it. */
    Optional<String> redo() {
        return history.redone().flatMap(it -> goTo(it, Undoing.REDONE, it.now().change()));
    }

    /** Shows the place of the change, so that one sees what was undone. */
    private Optional<String> goTo(final History other, final Undoing undoing, final String change) {
        final Vehicle before = now();
        final Optional<Entry> entry = Optional.ofNullable(typed.get(change)).map(Typed::entry);
        show(other);
        keeper.keep(now());
        Optional.ofNullable(typed.get(change))
                .map(Typed::at)
                .or(() -> Spot.firstOther(before, now()))
                .filter(it -> it.isIn(now()))
                .ifPresent(chosen::set);
        told.set(undoing.words(before, now(), entry));
        return entry.map(Entry::path);
    }

    private void show(final History other) {
        history = other;
        if (!chosen.get().isIn(other.vehicle())) {
            chosen.set(Spot.Fixed.WHOLE);
        }
        vehicle.set(other.vehicle());
        checking.check(now());
    }

    void choose(final Spot spot) {
        settled();
        told.set("");
        chosen.set(spot);
    }

    /** Adds a circuit with one load to describe, and goes there. */
    void addCircuit() {
        final int count = now().circuits().size();
        if (count < Vehicle.MOST_CIRCUITS) {
            final String name = CheckTexts.of("new-circuit", "number", count + 1);
            change("", it -> it.plus(NewCircuit.named(name, sums())));
            choose(new Spot.OfCircuit(count));
        }
    }

    /** Takes a circuit away; undo brings it back. */
    void removeCircuit(final int index) {
        chosen.set(Spot.Fixed.WHOLE);
        change("", it -> it.without(index));
    }

    /** Adds a load to describe; along a cable with several places at the last of them. */
    void addLoad(final int circuit) {
        final List<Stretch> stretches = now().circuits().get(circuit).stretches();
        final String at = stretches.isEmpty() ? "" : stretches.get(stretches.size() - 1).to();
        loads(circuit, loads -> loads.add(Load.named("").connectedAt(at)));
    }

    /** Makes the cable lead on to one more place; the first one parts it into stretches. */
    void addStretch(final int circuit) {
        change("", Lens.circuit(circuit).changing(CablePlaces::longer));
    }

    /** Takes a stretch away; undo brings it back. */
    void removeStretch(final int circuit, final int stretch) {
        change("", Lens.circuit(circuit).changing(it -> CablePlaces.without(it, stretch)));
    }

    /** Takes a load away; undo brings it back. */
    void removeLoad(final int circuit, final int load) {
        loads(circuit, loads -> loads.remove(load));
    }

    private void loads(final int circuit, final Consumer<List<Load>> how) {
        final Circuit before = now().circuits().get(circuit);
        final List<Load> loads = new ArrayList<>(before.loads());
        how.accept(loads);
        change("", it -> it.withCircuit(circuit, before.withLoads(loads)));
    }

    /** What a new circuit goes by. */
    SumsInUse sums() {
        return inUse.get();
    }

    /** How cable is sold to the person: what a figure without a unit means hangs on it. */
    WireSizes sizes() {
        return sums().sizes();
    }

    /** The vehicle as typed. */
    Vehicle now() {
        return vehicle.get();
    }

    ReadOnlyObjectProperty<Vehicle> vehicle() {
        return vehicle.getReadOnlyProperty();
    }

    /** What the check says. */
    Checking checking() {
        return checking;
    }

    /** The part whose form is shown. */
    ReadOnlyObjectProperty<Spot> chosen() {
        return chosen.getReadOnlyProperty();
    }

    /** Why a file could not be opened; empty where it could. */
    ReadOnlyStringProperty trouble() {
        return trouble.getReadOnlyProperty();
    }

    /** What was done last that is not seen by itself; empty for nothing. */
    ReadOnlyStringProperty told() {
        return told.getReadOnlyProperty();
    }

    /** How many vehicles were opened or begun: one may be just like that before it. */
    ReadOnlyIntegerProperty opened() {
        return opened.getReadOnlyProperty();
    }

    Keeper keeper() {
        return keeper;
    }

    Shelf shelf() {
        return shelf;
    }

    @Override
    public void close() {
        keeper.close();
    }
}
