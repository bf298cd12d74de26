package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Understood;
import wireworthy.working.CableNetwork;
import wireworthy.working.Caution;
import wireworthy.working.NetworkCautions;
import wireworthy.working.NetworkLoad;
import wireworthy.working.NetworkReader;
import wireworthy.working.NetworkSolution;
import wireworthy.working.NetworkSolver;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;
import wireworthy.working.WarmDrop;
import wireworthy.working.Worked;

/**
 * The sums of a circuit whose cable feeds several places in turn: first the voltages along it, then
 * fuse and ampacity by the current that came out and by the thinnest stretch.
 */
final class NetworkSums {
    private static final List<Quantity> BESIDE =
            List.of(
                    RESISTIVITY,
                    CONDUCTOR_TEMPERATURE,
                    CONDUCTOR_METAL,
                    RESISTANCE_PER_LENGTH,
                    DROP_LIMIT);
    private static final List<Quantity> BEHIND =
            List.of(
                    CABLE_TABLE,
                    INSULATION_TEMPERATURE,
                    AMBIENT_TEMPERATURE,
                    ENGINE_SPACE,
                    BUNDLED,
                    IN_THERMAL_INSULATION,
                    FUSE,
                    FUSE_SERIES,
                    FUSE_VOLTAGE,
                    BREAKING_CAPACITY,
                    MARGIN,
                    DROP_LIMIT,
                    AVAILABLE_SECTIONS);
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
                    SECTION_FOR_AMPACITY);
    private static final List<Quantity> BY_SECTION = List.of(ONE_WAY_LENGTH, SECTION);
    private static final String THINNER = "thinner-cable-behind";
    private static final double DAY = 24 * 3600.0;

    private final CircuitInput input;
    private final Circuit circuit;
    private final Solver solver;
    private final List<FieldNote> notes = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();
    private OptionalDouble warm = OptionalDouble.empty();

    private NetworkSums(final CircuitInput input, final Solver solver) {
        this.input = input;
        this.circuit = input.circuit();
        this.solver = solver;
    }

    static CircuitSums of(final CircuitInput input, final Solver solver) {
        return new NetworkSums(input, solver).sums();
    }

    private CircuitSums sums() {
        final Optional<NetworkSolution> solution = solution();
        final Givens givens = new Givens().of(circuit.part().given(), BEHIND);
        notes.forEach(givens::note);
        givens.volts(input.volts());
        thinnest().ifPresent(section -> givens.worked(SECTION, section));
        solution.map(NetworkSolution::current)
                .filter(amps -> amps > 0)
                .ifPresent(amps -> givens.worked(CIRCUIT_CURRENT, amps));
        final Sums behind = alarmed(Sums.of(solver, givens, FIND, circuit.part().answers()));
        return new CircuitSums(
                input,
                solution.map(it -> WorstOff.of(it).into(behind, circuit)).orElse(behind),
                solution,
                warm,
                CircuitSums.heating(thinnestOnly(), solver));
    }

    /** A thinner cable behind is safe where the fuse is known, and small enough for it too. */
    private Sums alarmed(final Sums behind) {
        final FuseWindow window =
                behind.window(behind.value(FUSE_CEILING), circuit.part().given().has(FUSE_SERIES));
        final boolean safe = window.chosen().isPresent() && !window.chosenAboveCeiling();
        return behind.cautioned(
                cautions.stream()
                        .filter(each -> !(safe && window.known() && each.id().equals(THINNER)))
                        .toList());
    }

    /** The circuit as if all its cable were as the thinnest stretch: what heats first. */
    private CircuitInput thinnestOnly() {
        final String section =
                thinnest().stream()
                        .mapToObj(m2 -> Givens.exact(m2, Dimension.AREA))
                        .findFirst()
                        .orElse("");
        return new CircuitInput(
                circuit.withGiven(SECTION, section), input.volts(), List.of(), input.fault());
    }

    private OptionalDouble thinnest() {
        return circuit.stretches().stream()
                .map(stretch -> Understood.of(SECTION, stretch.given().text(SECTION)))
                .filter(Understood.Figure.class::isInstance)
                .flatMapToDouble(each -> DoubleStream.of(((Understood.Figure) each).read().value()))
                .min();
    }

    private Optional<NetworkSolution> solution() {
        final Givens givens = new Givens().of(circuit.part().given(), BESIDE);
        givens.volts(input.volts());
        final Optional<ArrayNode> loads = LoadsGiven.of(circuit, List.of(), givens);
        final Optional<ArrayNode> stretches = StretchesGiven.of(circuit, input.taps(), givens);
        notes.addAll(givens.notes());
        if (givens.blocked() || loads.isEmpty() || stretches.isEmpty()) {
            return Optional.empty();
        }
        final ObjectNode network = givens.json().putObject("network");
        network.set("stretches", stretches.get());
        for (int i = 0; i < circuit.loads().size(); i++) {
            network.withArray("loads")
                    .add(load((ObjectNode) loads.get().get(i), circuit.loads().get(i)));
        }
        return solved(givens);
    }

    private Optional<NetworkSolution> solved(final Givens givens) {
        final ObjectNode question = JsonNodeFactory.instance.objectNode();
        question.set("given", givens.json());
        question.putArray("find").add(VOLTAGE_AT_LOAD.id());
        try {
            final Worked beside = NetworkReader.beside(question, solver);
            final CableNetwork network = NetworkReader.read(question, beside);
            return solved(network, beside);
        } catch (final Unworkable why) {
            notes.add(FieldNote.wrong(why.where(), Sums.sentence(InWords.of(why))));
            return Optional.empty();
        }
    }

    private Optional<NetworkSolution> solved(final CableNetwork network, final Worked beside) {
        try {
            final NetworkSolution solution = NetworkSolver.solve(network);
            cautions.addAll(NetworkCautions.of(solution, beside));
            warm = warmDrop(network, beside);
            return Optional.of(solution);
        } catch (final Unworkable why) {
            cautions.add(Unfed.caution(network, why));
            throw why;
        }
    }

    /** Only of cable known by length and section: a resistance that was given stays as it is. */
    private OptionalDouble warmDrop(final CableNetwork network, final Worked beside) {
        final boolean bySection =
                circuit.stretches().stream()
                        .allMatch(each -> BY_SECTION.containsAll(each.given().typed().keySet()));
        return bySection
                ? WarmDrop.of(network, beside)
                        .map(NetworkSums::drop)
                        .orElseGet(OptionalDouble::empty)
                : OptionalDouble.empty();
    }

    private static OptionalDouble drop(final CableNetwork network) {
        try {
            return largestDrop(NetworkSolver.solve(network));
        } catch (final Unworkable why) {
            return OptionalDouble.empty();
        }
    }

    /** V lost up to the load that is worst off. */
    static OptionalDouble largestDrop(final NetworkSolution solution) {
        return solution.network().loads().stream().mapToDouble(solution::drop).max();
    }

    /** A load as networks have it: all of one kind together, seen from the cable. */
    private static ObjectNode load(final ObjectNode listed, final Load load) {
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.set("name", listed.get("name"));
        json.put("at", load.at());
        final double count = figure(load, LoadEntry.COUNT, 1);
        final double efficiency = figure(load, LoadEntry.EFFICIENCY, 1);
        drawn(json, load, LoadEntry.POWER, count / efficiency);
        drawn(json, load, LoadEntry.CURRENT, count);
        drawn(json, load, LoadEntry.RESISTANCE, 1 / count);
        return json;
    }

    private static void drawn(
            final ObjectNode json, final Load load, final LoadEntry entry, final double times) {
        final double value = figure(load, entry, Double.NaN);
        if (!Double.isNaN(value)) {
            json.put(entry.key(), Givens.exact(value * times, entry.quantity().dimension()));
        }
    }

    private static double figure(final Load load, final LoadEntry entry, final double otherwise) {
        return Understood.of(entry.quantity(), load.entries().text(entry))
                        instanceof Understood.Figure figure
                ? figure.read().value()
                : otherwise;
    }

    /** J a day, each load at the voltage that reaches it but paid for at the supply. */
    static double dailyEnergy(final Circuit circuit, final NetworkSolution solution) {
        double amps = 0;
        for (int i = 0; i < circuit.loads().size(); i++) {
            final Load load = circuit.loads().get(i);
            final NetworkLoad drawn = solution.network().loads().get(i);
            amps += share(load) * drawn.current(solution.at(drawn.at()));
        }
        return DAY * solution.network().supply() * amps;
    }

    private static double share(final Load load) {
        final double hours = figure(load, LoadEntry.HOURS_A_DAY, DAY);
        return figure(load, LoadEntry.SHARE_OF_TIME, hours / DAY);
    }
}
