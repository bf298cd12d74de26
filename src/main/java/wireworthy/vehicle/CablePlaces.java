package wireworthy.vehicle;

import static wireworthy.rules.Quantity.ONE_WAY_LENGTH;
import static wireworthy.rules.Quantity.SECTION;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.working.CableNetwork;

/** The places along a cable, and how stretches come and go. */
public final class CablePlaces {
    private static final List<Quantity> CABLE = List.of(ONE_WAY_LENGTH, SECTION);

    private CablePlaces() {}

    /** The places a cable leads to, in the order of its stretches; its beginning first. */
    public static List<String> of(final Circuit circuit) {
        return Stream.concat(
                        Stream.of(CableNetwork.SOURCE),
                        circuit.stretches().stream()
                                .flatMap(each -> Stream.of(each.from(), each.to())))
                .filter(place -> !place.isBlank())
                .distinct()
                .toList();
    }

    /**
     * With one more stretch, from the end of the last one to a new place. The first one takes over
     * the length and the section that were typed for the cable, and the loads hang at its end.
     */
    public static Circuit longer(final Circuit circuit) {
        if (circuit.stretches().size() >= Vehicle.MOST_STRETCHES) {
            return circuit;
        }
        final List<Stretch> stretches = new ArrayList<>(circuit.stretches());
        final String from =
                stretches.isEmpty()
                        ? CableNetwork.SOURCE
                        : stretches.get(stretches.size() - 1).to();
        final String to = newPlace(of(circuit));
        stretches.add(new Stretch(from, to, Entries.none()));
        final Circuit longer = circuit.withStretches(stretches);
        return circuit.isNetwork() ? longer : begun(longer, to);
    }

    private static Circuit begun(final Circuit circuit, final String place) {
        Stretch first = circuit.stretches().get(0);
        Circuit begun = circuit;
        for (final Quantity quantity : CABLE) {
            first = first.with(quantity, circuit.part().given().text(quantity));
            begun = begun.withGiven(quantity, "");
        }
        return begun.withStretches(List.of(first))
                .withLoads(circuit.loads().stream().map(it -> it.connectedAt(place)).toList());
    }

    /** Without a stretch; with the last one gone it is one cable again. */
    public static Circuit without(final Circuit circuit, final int index) {
        final List<Stretch> stretches = new ArrayList<>(circuit.stretches());
        final Stretch gone = stretches.remove(index);
        final Circuit shorter = circuit.withStretches(stretches);
        return shorter.isNetwork() ? shorter : oneCable(shorter, gone);
    }

    private static Circuit oneCable(final Circuit circuit, final Stretch last) {
        Circuit one =
                circuit.withLoads(
                        circuit.loads().stream().map(load -> load.connectedAt("")).toList());
        for (final Quantity quantity : CABLE) {
            one = one.withGiven(quantity, last.given().text(quantity));
        }
        return one;
    }

    /** A letter no place has yet, or a number past Z. */
    private static String newPlace(final List<String> known) {
        return Stream.concat(
                        Stream.iterate('A', letter -> (char) (letter + 1))
                                .limit(26)
                                .map(String::valueOf),
                        Stream.iterate(27, number -> number + 1).map(String::valueOf))
                .filter(name -> !known.contains(name))
                .findFirst()
                .orElseThrow();
    }

    /** What begins or hangs at a place that is called otherwise now follows it there. */
    static Circuit followed(final Circuit circuit, final String before, final String now) {
        if (circuit.stretches().stream().anyMatch(it -> it.to().equals(before))) {
            return circuit;
        }
        return circuit.withStretches(
                        circuit.stretches().stream()
                                .map(it -> it.from().equals(before) ? it.beginningAt(now) : it)
                                .toList())
                .withLoads(
                        circuit.loads().stream()
                                .map(it -> it.at().equals(before) ? it.connectedAt(now) : it)
                                .toList());
    }
}
