package wireworthy.window.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.window.parts.FixedText;
import wireworthy.window.parts.NetworkDrawing;
import wireworthy.window.parts.NetworkDrawing.Place;
import wireworthy.window.parts.PlainTable;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.working.CableNetwork;
import wireworthy.working.NetworkLoad;
import wireworthy.working.NetworkSolution;

/**
 * The volts along a cable that feeds several places: drawn, and in words.
 *
 * @param supply its voltage
 * @param fuse its rating
 * @param first the places the cable leads to from its fuse
 * @param rows of each load: its name, its place, the volts there, the volts lost
 */
record AlongCable(String supply, String fuse, List<Place> first, List<List<String>> rows) {
    private static final List<String> HEADS =
            List.of("along.load", "along.at", "along.volts", "along.lost");
    private static final double NAME = 10;
    private static final double FIGURE = 5.5;
    private static final int LONGEST = 18;

    /** What a circuit shows that has been worked. */
    static AlongCable of(final CheckedCircuit circuit, final NetworkSolution solution) {
        final OptionalDouble fuse = circuit.fuse().inUse();
        return new AlongCable(
                volts(solution.network().supply()),
                fuse.isEmpty() ? "?" : amps(fuse.getAsDouble()),
                new Walk(circuit, solution).from(CableNetwork.SOURCE),
                solution.network().loads().stream().map(it -> row(circuit, solution, it)).toList());
    }

    private static List<String> row(
            final CheckedCircuit circuit, final NetworkSolution solution, final NetworkLoad load) {
        final double lost = solution.drop(load);
        return List.of(
                load.name(),
                place(load.at()),
                volts(solution.at(load.at())),
                tooMuch(circuit, lost) + volts(lost));
    }

    /** The sign of a drop over the limit; empty within it. */
    private static String tooMuch(final CheckedCircuit circuit, final double drop) {
        return drop > circuit.dropLimit().orElse(Double.MAX_VALUE) * (1 + 1e-9) ? "! " : "";
    }

    private static String place(final String name) {
        return name.equals(CableNetwork.SOURCE) ? CheckTexts.of("place.source") : name;
    }

    private static String volts(final double volts) {
        return Texts.kept(FigureText.of(volts, Dimension.VOLTAGE, 4));
    }

    private static String amps(final double amps) {
        return Texts.kept(FigureText.of(amps, Dimension.CURRENT));
    }

    /** How it is shown: the drawing, and a table that says the same. */
    List<Node> drawn() {
        final PlainTable table = new PlainTable();
        table.row(true, cells(HEADS.stream().map(CheckTexts::of).toList()));
        rows.forEach(row -> table.row(false, cells(row)));
        return List.of(
                Texts.subtitle(CheckTexts.of("along")),
                Texts.soft(CheckTexts.of("along.what")),
                WholeResults.sideways(
                        new NetworkDrawing(supply, fuse, first, inWords()), CheckTexts.of("along")),
                WholeResults.sideways(table, CheckTexts.of("along.table")));
    }

    private String inWords() {
        return rows.stream()
                .map(
                        row ->
                                CheckTexts.of(
                                        "along.words",
                                        "load",
                                        row.get(0),
                                        "place",
                                        row.get(1),
                                        "volts",
                                        row.get(2),
                                        "lost",
                                        row.get(3)))
                .collect(
                        Collectors.joining(
                                " ",
                                CheckTexts.of("along.words.feed", "supply", supply, "fuse", fuse)
                                        + " ",
                                ""));
    }

    private static List<PlainTable.Cell> cells(final List<String> texts) {
        return Stream.concat(
                        texts.stream().limit(2).map(it -> cell(it, NAME, false)),
                        texts.stream().skip(2).map(it -> cell(it, FIGURE, true)))
                .toList();
    }

    private static PlainTable.Cell cell(
            final String text, final double width, final boolean figure) {
        final FixedText cell = new FixedText(text, width);
        if (figure) {
            cell.getStyleClass().add(Styles.FIGURE_TEXT);
        }
        return new PlainTable.Cell(cell, figure);
    }

    /** Goes along the cable from its fuse, each stretch once. */
    private static final class Walk {
        private final CheckedCircuit circuit;
        private final NetworkSolution solution;
        private final Set<Integer> gone = new HashSet<>();
        private final Set<String> reached = new HashSet<>(Set.of(CableNetwork.SOURCE));

        Walk(final CheckedCircuit circuit, final NetworkSolution solution) {
            this.circuit = circuit;
            this.solution = solution;
        }

        List<Place> from(final String place) {
            final List<CableNetwork.Stretch> stretches = solution.network().stretches();
            final List<Place> beyond = new ArrayList<>();
            for (int i = 0; i < stretches.size(); i++) {
                final CableNetwork.Stretch stretch = stretches.get(i);
                final boolean onward = stretch.from().equals(place);
                if ((onward || stretch.to().equals(place)) && gone.add(i)) {
                    beyond.add(at(onward ? stretch.to() : stretch.from(), i));
                }
            }
            return beyond;
        }

        private Place at(final String name, final int stretch) {
            final boolean again = !reached.add(name);
            final double drop = solution.network().supply() - solution.at(name);
            return new Place(
                    again ? CheckTexts.of("along.again", "place", place(name)) : name,
                    tooMuch(circuit, drop) + volts(solution.at(name)),
                    cable(circuit.circuit().stretches().get(stretch).given()),
                    amps(Math.abs(solution.through(solution.network().stretches().get(stretch)))),
                    again ? List.of() : loads(name),
                    again,
                    again ? List.of() : from(name));
        }

        private List<String> loads(final String place) {
            return solution.network().loads().stream()
                    .filter(load -> load.at().equals(place))
                    .map(load -> shortened(load.name()))
                    .toList();
        }

        private static String shortened(final String name) {
            return name.length() > LONGEST ? name.substring(0, LONGEST - 1) + "…" : name;
        }

        private static String cable(final Entries<Quantity> given) {
            return Stream.of(Quantity.SECTION, Quantity.ONE_WAY_LENGTH)
                    .map(it -> Understood.of(it, given.text(it)).text())
                    .filter(it -> !it.isEmpty())
                    .collect(Collectors.joining(", "));
        }
    }
}
