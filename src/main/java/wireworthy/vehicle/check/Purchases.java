package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.CABLE_TABLE;
import static wireworthy.rules.Quantity.LOOP_LENGTH;
import static wireworthy.rules.Quantity.ONE_WAY_LENGTH;
import static wireworthy.rules.Quantity.RETURN;
import static wireworthy.rules.Quantity.SECTION;
import static wireworthy.rules.Quantity.STANDARD_SECTION;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import wireworthy.facts.CableTables;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Part;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Understood;

/**
 * What there is to buy for a vehicle.
 *
 * @param cables by section and colour
 * @param fuses by series and rating, those of the circuits and the main fuse
 * @param ends lugs or ferrules by section: one at each end of each conductor
 * @param unfit fuses the builder chose that do not fit, and what is counted in their place
 * @param unjudged fuses the builder chose of which nothing says that they protect their cable
 * @param missing circuits of which something could not be counted, and what
 */
public record Purchases(
        List<Item> cables,
        List<Item> fuses,
        List<Item> ends,
        List<String> unfit,
        List<String> unjudged,
        List<String> missing) {
    /**
     * A number of things of one kind.
     *
     * @param kind what to ask for in a shop
     * @param amount how much or how many of it
     */
    public record Item(String kind, String amount) {}

    /** Room for bends, ends and second tries; common practice, no source. */
    private static final double SPARE = 1.1;

    public Purchases {
        cables = List.copyOf(cables);
        fuses = List.copyOf(fuses);
        ends = List.copyOf(ends);
        unfit = List.copyOf(unfit);
        unjudged = List.copyOf(unjudged);
        missing = List.copyOf(missing);
    }

    /** Counts what a checked vehicle needs; a cable not chosen yet is taken as thin as will do. */
    public static Purchases of(final CheckedVehicle checked) {
        final Counting counting = new Counting();
        counting.main(checked);
        checked.circuits().forEach(counting::circuit);
        return counting.purchases();
    }

    /** What is bought, in the order of a list: by series, then by size. */
    private record Kind(String series, double size, String text) {
        private static final Comparator<Kind> ORDER =
                Comparator.comparing(Kind::series)
                        .thenComparingDouble(Kind::size)
                        .thenComparing(Kind::text);

        private Kind and(final String more) {
            return new Kind(series, size, text + more);
        }
    }

    private static final class Counting {
        private final Map<Kind, Double> metres = new TreeMap<>(Kind.ORDER);
        private final Map<Kind, Integer> fuses = new TreeMap<>(Kind.ORDER);
        private final Map<Kind, Integer> ends = new TreeMap<>(Kind.ORDER);
        private final List<String> unfit = new ArrayList<>();
        private final List<String> unjudged = new ArrayList<>();
        private final List<String> missing = new ArrayList<>();

        private void main(final CheckedVehicle checked) {
            fuse(checked.mainFuse(), Said.of("buy.main-fuse"));
            final Part part = checked.vehicle().main();
            final Optional<Found> needed = checked.main().found(STANDARD_SECTION);
            cable(part, needed, Said.of("buy.any-colour"), Said.of("buy.main-cable"));
        }

        private void circuit(final CheckedCircuit checked) {
            final Circuit circuit = checked.circuit();
            if (circuit.feed().ownFuse()) {
                fuse(checked.fuse(), circuit.name());
            }
            if (circuit.isNetwork()) {
                circuit.stretches().forEach(stretch -> stretch(circuit, stretch));
            } else {
                final Optional<Found> needed = checked.found(STANDARD_SECTION);
                cable(circuit.part(), needed, colour(circuit), circuit.name());
            }
        }

        private void stretch(final Circuit circuit, final Stretch stretch) {
            final Part part = new Part(stretch.given(), Part.EMPTY.answers());
            cable(part, Optional.empty(), colour(circuit), circuit.name());
        }

        private void cable(
                final Part part, Optional<Found> needed, final String colour, final String whose) {
            final Optional<Kind> section =
                    read(part, SECTION)
                            .map(typed -> new Kind("", typed.read().value(), typed.text()))
                            .or(() -> needed.flatMap(Counting::kind));
            final OptionalDouble loop = loop(part);
            if (section.isEmpty() || loop.isEmpty()) {
                missing.add(Said.of("buy.cable", "whose", whose));
                return;
            }
            final Kind kind = section.get().and(table(part));
            metres.merge(kind.and(", " + colour), loop.getAsDouble(), Double::sum);
            ends.merge(kind, returnsByCable(part) ? 4 : 2, Integer::sum);
        }

        private static Optional<Kind> kind(final Found needed) {
            return needed.value().isPresent()
                    ? Optional.of(new Kind("", needed.value().getAsDouble(), needed.text()))
                    : Optional.empty();
        }

        private void fuse(final FuseWindow window, final String whose) {
            if (window.chosenUnfit()) {
                unfit.add(unfit(window, whose));
            }
            if (window.chosen().isPresent() && window.ceiling().isEmpty()) {
                final String chosen = amps(window.chosen());
                unjudged.add(Said.of("buy.unjudged", "whose", whose, "chosen", chosen));
            }
            if (window.fitting().isEmpty()) {
                missing.add(Said.of("buy.fuse", "whose", whose));
                return;
            }
            final String series = window.series().words();
            final double rating = window.fitting().getAsDouble();
            final String text = series + ", " + FigureText.of(rating, Dimension.CURRENT, 4);
            fuses.merge(new Kind(series, rating, text), 1, Integer::sum);
        }

        /** A fuse that does not fit is never bought. */
        private static String unfit(final FuseWindow window, final String whose) {
            final String chosen = amps(window.chosen());
            return window.fitting().isEmpty()
                    ? Said.of("buy.unfit.none", "whose", whose, "chosen", chosen)
                    : Said.of(
                            "buy.unfit",
                            "whose",
                            whose,
                            "chosen",
                            chosen,
                            "fitting",
                            amps(window.fitting()));
        }

        private static String amps(final OptionalDouble rating) {
            return FigureText.of(rating.orElseThrow(), Dimension.CURRENT, 4);
        }

        private Purchases purchases() {
            return new Purchases(
                    metres.entrySet().stream()
                            .map(e -> new Item(e.getKey().text(), metres(e.getValue())))
                            .toList(),
                    pieces(fuses),
                    pieces(ends),
                    unfit,
                    unjudged,
                    missing);
        }

        private static String metres(final double loop) {
            return (long) Math.ceil(loop * SPARE - 1e-9) + " m";
        }

        private static List<Item> pieces(final Map<Kind, Integer> counted) {
            return counted.entrySet().stream()
                    .map(e -> new Item(e.getKey().text(), String.valueOf(e.getValue())))
                    .toList();
        }
    }

    private static Optional<Understood.Figure> read(final Part part, final Quantity quantity) {
        return Understood.of(quantity, part.given().text(quantity))
                        instanceof Understood.Figure figure
                ? Optional.of(figure)
                : Optional.empty();
    }

    /** Metres of conductor, out and back. */
    private static OptionalDouble loop(final Part part) {
        final double conductors = returnsByCable(part) ? 2 : 1;
        return Stream.concat(
                        read(part, ONE_WAY_LENGTH).map(l -> conductors * l.read().value()).stream(),
                        read(part, LOOP_LENGTH).map(l -> l.read().value()).stream())
                .mapToDouble(metres -> metres)
                .findFirst();
    }

    private static String table(final Part part) {
        final String table = part.given().text(CABLE_TABLE);
        return " (" + (table.isBlank() ? CableTables.USUAL : table.strip()) + ")";
    }

    private static String colour(final Circuit circuit) {
        return circuit.colour().isBlank() ? Said.of("buy.any-colour") : circuit.colour().strip();
    }

    /** On a chassis return only one conductor is laid. */
    private static boolean returnsByCable(final Part part) {
        return !part.given().text(RETURN).strip().equalsIgnoreCase("chassis");
    }
}
