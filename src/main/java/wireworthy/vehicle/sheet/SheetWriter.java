package wireworthy.vehicle.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.Vocabulary;

/**
 * The circuits of a vehicle as CSV, a row a load: with a byte order mark, so that spreadsheets take
 * it as UTF-8, and lines as RFC 4180 has them. A cell a spreadsheet would work as a formula gets an
 * apostrophe before it; it is taken off again when the file is read. A row has room for one cable:
 * of a circuit with several stretches they are left out, which its row says.
 */
public final class SheetWriter {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final String FORMULA = "=+-@\t\r";

    private static final String NOTES = "Notes";
    private static final String STRETCHES_LEFT_OUT =
            "Several stretches of cable: they are not in this file.";

    private SheetWriter() {}

    /** The circuits whose stretches of cable find no room in the file. */
    public static List<String> notWhole(final Vehicle vehicle) {
        return vehicle.circuits().stream().filter(Circuit::isNetwork).map(Circuit::name).toList();
    }

    /**
     * The text of the file.
     *
     * @param separator comma, or semicolon where decimal commas are usual
     */
    public static String text(final Vehicle vehicle, final char separator) {
        final List<Quantity> given = used(vehicle, Vocabulary.CIRCUIT, false);
        final List<Quantity> own = used(vehicle, List.of(Quantity.values()), true);
        final StringBuilder text = new StringBuilder(BYTE_ORDER_MARK);
        final boolean noted = !notWhole(vehicle).isEmpty();
        line(text, noted(noted, headings(given, own), NOTES), separator);
        for (final Circuit circuit : vehicle.circuits()) {
            final String note = circuit.isNetwork() ? STRETCHES_LEFT_OUT : "";
            rows(circuit, given, own)
                    .forEach(row -> line(text, noted(noted, row, note), separator));
        }
        return text.toString();
    }

    private static List<String> noted(
            final boolean noted, final List<String> cells, final String note) {
        return noted ? Stream.concat(cells.stream(), Stream.of(note)).toList() : cells;
    }

    private static List<Quantity> used(
            final Vehicle vehicle, final List<Quantity> order, final boolean answers) {
        return order.stream()
                .filter(
                        quantity ->
                                vehicle.circuits().stream()
                                        .map(Circuit::part)
                                        .map(part -> answers ? part.answers() : part.given())
                                        .anyMatch(entries -> entries.has(quantity)))
                .toList();
    }

    private static List<String> headings(final List<Quantity> given, final List<Quantity> own) {
        final List<String> headings =
                new ArrayList<>(List.of("Circuit", "Load", "Colour", "Fed from"));
        Stream.of(LoadEntry.values()).map(SheetWriter::heading).forEach(headings::add);
        given.forEach(quantity -> headings.add(quantity.words()));
        own.forEach(quantity -> headings.add(OWN + quantity.words()));
        return headings;
    }

    /** What stands before the heading of an own figure. */
    static final String OWN = "my ";

    static String heading(final LoadEntry entry) {
        return "load " + entry.key().replace('-', ' ');
    }

    private static Stream<List<String>> rows(
            final Circuit circuit, final List<Quantity> given, final List<Quantity> own) {
        final Load nothing = Load.named("");
        final List<Load> loads = circuit.loads().isEmpty() ? List.of(nothing) : circuit.loads();
        return loads.stream().map(load -> row(circuit, load, given, own));
    }

    private static List<String> row(
            final Circuit circuit,
            final Load load,
            final List<Quantity> given,
            final List<Quantity> own) {
        final List<String> cells =
                new ArrayList<>(
                        List.of(
                                circuit.name(),
                                load.name(),
                                circuit.colour(),
                                circuit.feed().circuit()));
        Stream.of(LoadEntry.values()).map(load.entries()::text).forEach(cells::add);
        given.stream().map(circuit.part().given()::text).forEach(cells::add);
        own.stream().map(circuit.part().answers()::text).forEach(cells::add);
        return cells;
    }

    private static void line(
            final StringBuilder text, final List<String> cells, final char separator) {
        text.append(
                cells.stream()
                        .map(cell -> cell(cell, separator))
                        .collect(Collectors.joining(String.valueOf(separator))));
        text.append("\r\n");
    }

    private static String cell(final String typed, final char separator) {
        final String safe = isFormula(typed) ? "'" + typed : typed;
        final boolean quoted =
                safe.indexOf(separator) >= 0
                        || safe.indexOf('"') >= 0
                        || safe.indexOf('\n') >= 0
                        || safe.indexOf('\r') >= 0;
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    /** Blanks before it don't keep every spreadsheet from working it. */
    private static boolean isFormula(final String typed) {
        final String bare = typed.replaceAll("^[ \\u00a0]+", "");
        return !bare.isEmpty() && FORMULA.indexOf(bare.charAt(0)) >= 0;
    }
}
