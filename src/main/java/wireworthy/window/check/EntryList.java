package wireworthy.window.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Part;
import wireworthy.vehicle.Vocabulary;

/** The entries of the forms, those that everyone needs apart from the others. */
final class EntryList {
    /** How the paths of the builder's own figures begin. */
    static final String OWN = "answers.";

    /** Where the notes stand, of the vehicle and of a circuit. */
    static final String NOTES = "notes";

    /** What is asked of every circuit. */
    static final List<Quantity> CABLE = List.of(ONE_WAY_LENGTH, SECTION, FUSE);

    /** What is asked of every load. */
    static final List<LoadEntry> DRAW =
            List.of(LoadEntry.POWER, LoadEntry.CURRENT, LoadEntry.COUNT);

    static final List<LoadEntry> MORE_OF_LOAD =
            List.of(
                    LoadEntry.EFFICIENCY,
                    LoadEntry.START_MULTIPLE,
                    LoadEntry.HOURS_A_DAY,
                    LoadEntry.SHARE_OF_TIME,
                    LoadEntry.RESISTANCE);

    static final List<Quantity> BATTERY = List.of(SUPPLY_VOLTAGE, BATTERY_CAPACITY, IN_PARALLEL);

    static final List<Quantity> MAIN_CABLE = List.of(MAIN_FUSE, ONE_WAY_LENGTH, SECTION);

    private final VehicleModel model;
    private final Spot spot;
    private final Lens<Part> part;

    private EntryList(final VehicleModel model, final Spot spot, final Lens<Part> part) {
        this.model = model;
        this.spot = spot;
        this.part = part;
    }

    static EntryList supply(final VehicleModel model) {
        return new EntryList(model, Spot.Fixed.SUPPLY, Lens.SUPPLY);
    }

    static EntryList main(final VehicleModel model) {
        return new EntryList(model, Spot.Fixed.MAIN, Lens.MAIN);
    }

    static EntryList circuit(final VehicleModel model, final int index) {
        return new EntryList(model, new Spot.OfCircuit(index), Lens.part(index));
    }

    /** The name of the vehicle. */
    static Entry vehicleName(final VehicleModel model) {
        return new Entry(
                model,
                Spot.Fixed.WHOLE,
                "name",
                "vehicle",
                Optional.empty(),
                Lens.NAME,
                Optional.empty());
    }

    /** The builder's own notes. */
    static Entry notes(final VehicleModel model) {
        return new Entry(
                model,
                Spot.Fixed.WHOLE,
                NOTES,
                NOTES,
                Optional.empty(),
                Lens.NOTES,
                Optional.empty());
    }

    /** The sections that can be bought, for every circuit that names none of its own. */
    static Entry stock(final VehicleModel model) {
        return main(model).given(List.of(AVAILABLE_SECTIONS)).get(0);
    }

    /** The voltage of the supply, without which hardly anything can be worked. */
    static Entry volts(final VehicleModel model) {
        return supply(model).given(List.of(SUPPLY_VOLTAGE)).get(0);
    }

    /** The entries of some quantities. */
    List<Entry> given(final List<Quantity> quantities) {
        return quantities.stream()
                .map(
                        it ->
                                new Entry(
                                        model,
                                        spot,
                                        "given." + it.id(),
                                        it.id(),
                                        Optional.of(it),
                                        Lens.given(part, it),
                                        Optional.empty()))
                .toList();
    }

    /** Those of a vocabulary that are not asked at first. */
    List<Entry> others(final List<Quantity> vocabulary, final List<Quantity> asked) {
        return given(vocabulary.stream().filter(it -> !asked.contains(it)).toList());
    }

    List<Entry> moreOfCable() {
        return others(Vocabulary.CIRCUIT, CABLE);
    }

    /** The builder's own figure of a quantity. */
    Entry own(final Quantity quantity) {
        return new Entry(
                model,
                spot,
                OWN + quantity.id(),
                "own",
                Optional.of(quantity),
                Lens.own(part, quantity),
                Optional.empty());
    }

    /** Name, colour and what it never runs with, of a circuit. */
    static Entry name(final VehicleModel model, final int circuit) {
        return word(
                model,
                circuit,
                "name",
                Lens.circuit(circuit).then(Circuit::name, Circuit::renamed));
    }

    static Entry colour(final VehicleModel model, final int circuit) {
        return word(
                model,
                circuit,
                "colour",
                Lens.circuit(circuit).then(Circuit::colour, Circuit::withColour));
    }

    static Entry neverWith(final VehicleModel model, final int circuit) {
        return word(
                model,
                circuit,
                "never-with",
                Lens.circuit(circuit).then(Circuit::neverWith, Circuit::withNeverWith));
    }

    /** The builder's own notes on a circuit. */
    static Entry notes(final VehicleModel model, final int circuit) {
        return word(
                model,
                circuit,
                NOTES,
                Lens.circuit(circuit).then(Circuit::notes, Circuit::withNotes));
    }

    private static Entry word(
            final VehicleModel model,
            final int circuit,
            final String key,
            final Lens<String> lens) {
        return new Entry(
                model,
                new Spot.OfCircuit(circuit),
                key,
                "circuit." + key,
                Optional.empty(),
                lens,
                Optional.empty());
    }

    /** The name of a load. */
    static Entry loadName(final VehicleModel model, final int circuit, final int load) {
        return new Entry(
                model,
                new Spot.OfCircuit(circuit),
                path(model, circuit, load) + "name",
                "load.name",
                Optional.empty(),
                name(circuit, load),
                Optional.empty());
    }

    private static Lens<String> name(final int circuit, final int load) {
        return Lens.load(circuit, load).then(Load::name, Load::renamed);
    }

    /** An entry of a load. */
    static Entry ofLoad(
            final VehicleModel model, final int circuit, final int load, final LoadEntry entry) {
        return new Entry(
                model,
                new Spot.OfCircuit(circuit),
                path(model, circuit, load) + entry.key(),
                "load." + entry.key(),
                Optional.of(entry.quantity()),
                Lens.entry(Lens.load(circuit, load), entry),
                Optional.of(name(circuit, load)));
    }

    private static String path(final VehicleModel model, final int circuit, final int load) {
        final boolean network = model.now().circuits().get(circuit).isNetwork();
        return (network ? "given.network.loads[" : "given.loads[") + load + "].";
    }
}
