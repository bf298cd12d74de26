package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.LoadEntry;
import wireworthy.working.NetworkSolution;
import wireworthy.working.Solver;
import wireworthy.working.WarmDrop;
import wireworthy.working.Worked;

/**
 * The sums of one circuit on its own, whatever it is fed from.
 *
 * @param network the voltages along the cable, where it feeds several places
 * @param warmDrop V lost up to the load of that cable that is worst off, where the cable is warm
 *     and as resistive as its standard allows; empty where not known
 * @param heating s in which a short circuit heats the cable; empty where not known
 */
record CircuitSums(
        CircuitInput input,
        Sums sums,
        Optional<NetworkSolution> network,
        OptionalDouble warmDrop,
        OptionalDouble heating) {
    private static final List<Quantity> FIND =
            List.of(
                    CIRCUIT_CURRENT,
                    FUSE_FLOOR,
                    TABLE_AMPACITY,
                    AMBIENT_FACTOR,
                    BUNDLE_FACTOR,
                    AMPACITY,
                    FUSE_CEILING,
                    FUSE,
                    LOOP_RESISTANCE,
                    DROP,
                    DROP_PERCENT,
                    VOLTAGE_AT_LOAD,
                    POWER_LOST,
                    SECTION_FOR_DROP,
                    SECTION_FOR_AMPACITY,
                    STANDARD_SECTION,
                    LONGEST_RUN,
                    DAILY_ENERGY);
    private static final List<Quantity> HEATED =
            List.of(SECTION, CABLE_TABLE, INSULATION_TEMPERATURE);

    static CircuitSums of(final CircuitInput input, final Solver solver) {
        return worked(input, solver).doubted(solver).withHours();
    }

    private CircuitSums withHours() {
        return AllDay.in(input.circuit()) ? with(sums.allDay()) : this;
    }

    /** The same with other sums of the circuit itself. */
    CircuitSums with(final Sums others) {
        return new CircuitSums(input, others, network, warmDrop, heating);
    }

    private CircuitSums doubted(final Solver solver) {
        final Unprotected unprotected =
                new Unprotected(solver, sums, input.circuit().part().given().has(SECTION));
        final List<String> said = sums.notes().stream().map(FieldNote::where).toList();
        final List<FieldNote> doubts =
                Stream.concat(unprotected.notes().stream(), Doubts.of(input.circuit()).stream())
                        .filter(note -> !said.contains(note.where()))
                        .toList();
        return with(sums.with(List.of(), doubts).cautioned(unprotected.cautions()));
    }

    private static CircuitSums worked(final CircuitInput input, final Solver solver) {
        return input.circuit().isNetwork()
                ? NetworkSums.of(input, solver)
                : new CircuitSums(
                        input,
                        simple(input, solver),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        heating(input, solver));
    }

    private static Sums simple(final CircuitInput input, final Solver solver) {
        final Circuit circuit = input.circuit();
        final Givens givens = new Givens().all(circuit.part().given());
        givens.volts(input.volts());
        LoadsGiven.of(circuit, input.taps(), givens)
                .ifPresent(loads -> givens.json().set(LOADS.id(), loads));
        cable(circuit, givens);
        final Sums sums = Sums.of(solver, givens, find(input), circuit.part().answers());
        return circuit.part().given().has(SECTION) ? sums : sums.with(List.of(), proposed(sums));
    }

    private static void cable(final Circuit circuit, final Givens givens) {
        final Entries<Quantity> given = circuit.part().given();
        if (!given.has(ONE_WAY_LENGTH) && !given.has(LOOP_LENGTH)) {
            givens.note(FieldNote.missing("given.one-way-length", Said.of("no-length")));
        }
        if (!given.has(SECTION)) {
            givens.note(FieldNote.missing("given.section", Said.of("no-section")));
        }
    }

    /** Where no section is typed, the one to take. */
    private static List<FieldNote> proposed(final Sums sums) {
        return sums.found().stream()
                .filter(each -> each.quantity() == STANDARD_SECTION && each.value().isPresent())
                .map(CircuitSums::toTake)
                .map(text -> FieldNote.missing("given.section", text))
                .toList();
    }

    /** What to take where no section is typed. */
    static String toTake(final Found section) {
        return Said.of("no-section.take", "section", section.text());
    }

    private static List<Quantity> find(final CircuitInput input) {
        final List<Quantity> find = new ArrayList<>(FIND);
        if (starts(input)) {
            find.add(START_CURRENT);
        }
        if (input.circuit().loads().size() == 1) {
            find.add(0, LOAD_CURRENT);
        }
        return find;
    }

    private static boolean starts(final CircuitInput input) {
        return input.taps().stream().anyMatch(tap -> tap.startMultiple().isPresent())
                || input.circuit().loads().stream()
                        .anyMatch(load -> load.entries().has(LoadEntry.START_MULTIPLE));
    }

    /** How fast a short circuit heats the cable; past 5 s the sum does not hold. */
    static OptionalDouble heating(final CircuitInput input, final Solver solver) {
        if (input.fault().isEmpty()) {
            return OptionalDouble.empty();
        }
        final Givens givens = new Givens().of(input.circuit().part().given(), HEATED);
        input.fault().ifPresent(amps -> givens.worked(SHORT_CIRCUIT_CURRENT, amps));
        return Sums.of(solver, givens, List.of(ADIABATIC_TIME), Entries.none())
                .value(ADIABATIC_TIME);
    }

    /** V lost in its own cable where that is warm; empty where not known. */
    OptionalDouble warm() {
        return network.isPresent()
                ? warmDrop
                : sums.around().map(WarmDrop::of).orElseGet(OptionalDouble::empty);
    }

    /** This circuit as a load of the cable it is tapped off. */
    Tap asTap() {
        final OptionalDouble current = sums.value(CIRCUIT_CURRENT);
        return new Tap(input.circuit().name(), current, share(current), start(current));
    }

    private OptionalDouble share(final OptionalDouble current) {
        final OptionalDouble daily = sums.value(DAILY_ENERGY);
        final OptionalDouble volts = sums.value(SUPPLY_VOLTAGE);
        if (current.isEmpty() || daily.isEmpty() || volts.isEmpty()) {
            return OptionalDouble.empty();
        }
        final double always = 24 * 3600.0 * volts.getAsDouble() * current.getAsDouble();
        return OptionalDouble.of(Math.min(1, daily.getAsDouble() / always));
    }

    private OptionalDouble start(final OptionalDouble current) {
        final OptionalDouble start = sums.value(START_CURRENT);
        return current.isEmpty() || start.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(start.getAsDouble() / current.getAsDouble());
    }

    /** A that all loads of one line take; empty where not known. */
    OptionalDouble loadCurrent(final int load) {
        return sums.worked().map(worked -> ofLoad(worked, load)).orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble ofLoad(final Worked worked, final int load) {
        final OptionalDouble supply = worked.value(new Ref(SUPPLY_CURRENT, load + 1));
        final OptionalDouble each =
                supply.isPresent() ? supply : worked.value(new Ref(LOAD_CURRENT, load + 1));
        final double count = worked.value(new Ref(LOAD_COUNT, load + 1)).orElse(1);
        return each.isEmpty() ? each : OptionalDouble.of(each.getAsDouble() * count);
    }
}
