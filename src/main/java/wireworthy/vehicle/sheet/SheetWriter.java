package wireworthy.vehicle.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.Vocabulary;
import wireworthy.vehicle.check.VehicleChecker;

/**
 * The circuits of a vehicle as CSV, a row a load, and after them a row a stretch of cable: with a
 * byte order mark, so that spreadsheets take it as UTF-8, and lines as RFC 4180 has them. A cell a
 * spreadsheet would work as a formula gets an apostrophe before it; it is taken off again when the
 * file is read.
 */
public final class SheetWriter {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final String FORMULA = "=+-@\t\r";

    /** The heading of the voltage of the vehicle, which stands in every row. */
    static final String VOLTS = Quantity.SUPPLY_VOLTAGE.inFiles();

    /** The columns of a cable with several places, in this order. */
    static final Map<String, Target> PLACES =
            Map.of(
                    "load at", Target.Word.AT,
                    "stretch from", Target.Word.FROM,
                    "stretch to", Target.Word.TO);

    /** The columns of how circuits are fed, where there is something to say of it. */
    static final Map<String, Target> FEEDS =
            Map.of("fused tap", Target.Word.OWN_FUSE, "never with", Target.Word.NEVER_WITH);

    private static final List<String> FEED_HEADINGS = FEEDS.keySet().stream().sorted().toList();

    private static final String NOTES = "Notes";

    private static final List<String> PLACE_HEADINGS = PLACES.keySet().stream().sorted().toList();

    /** What stands before the heading of what only a stretch of cable has. */
    static final String STRETCH = "stretch ";

    private static final List<Quantity> GIVEN =
            Stream.concat(Vocabulary.CIRCUIT.stream(), Vocabulary.STRETCH.stream())
                    .distinct()
                    .toList();

    /**
     * The columns of a file.
     *
     * @param volts of the supply, as text; empty where not known, and then they have no column
     * @param feeds whether one is tapped off through a fuse of its own, or never runs with another
     * @param notes whether a circuit has any
     * @param places whether a cable leads to several
     */
    private record Columns(
            String volts,
            boolean feeds,
            boolean notes,
            boolean places,
            List<Quantity> given,
            List<Quantity> own) {}

    private SheetWriter() {}

    /**
     * The text of the file.
     *
     * @param separator comma, or semicolon where decimal commas are usual
     */
    public static String text(final Vehicle vehicle, final char separator) {
        final Columns columns =
                new Columns(
                        pointed(Quantity.SUPPLY_VOLTAGE, VehicleChecker.volts(vehicle)),
                        vehicle.circuits().stream().anyMatch(SheetWriter::isFed),
                        vehicle.circuits().stream().anyMatch(each -> !each.notes().isEmpty()),
                        vehicle.circuits().stream().anyMatch(Circuit::isNetwork),
                        GIVEN.stream().filter(each -> isGiven(vehicle, each)).toList(),
                        Stream.of(Quantity.values()).filter(each -> isOwn(vehicle, each)).toList());
        final StringBuilder text = new StringBuilder(BYTE_ORDER_MARK);
        line(text, headings(columns), separator);
        vehicle.circuits().stream()
                .flatMap(circuit -> rows(circuit, columns))
                .forEach(row -> line(text, row, separator));
        return text.toString();
    }

    private static boolean isFed(final Circuit circuit) {
        return hasOwnFuse(circuit) || !circuit.neverWith().isBlank();
    }

    /** At the board one always sits. */
    private static boolean hasOwnFuse(final Circuit circuit) {
        return circuit.feed().isTap() && circuit.feed().ownFuse();
    }

    private static boolean isGiven(final Vehicle vehicle, final Quantity quantity) {
        return vehicle.circuits().stream()
                .anyMatch(
                        circuit ->
                                circuit.part().given().has(quantity)
                                        || circuit.stretches().stream()
                                                .anyMatch(each -> each.given().has(quantity)));
    }

    private static boolean isOwn(final Vehicle vehicle, final Quantity quantity) {
        return vehicle.circuits().stream()
                .anyMatch(circuit -> circuit.part().answers().has(quantity));
    }

    private static List<String> headings(final Columns columns) {
        final List<String> headings =
                new ArrayList<>(List.of("Circuit", "Load", "Colour", "Fed from"));
        if (columns.feeds()) {
            headings.addAll(FEED_HEADINGS);
        }
        if (columns.notes()) {
            headings.add(NOTES);
        }
        if (columns.places()) {
            headings.addAll(PLACE_HEADINGS);
        }
        if (!columns.volts().isEmpty()) {
            headings.add(VOLTS);
        }
        Stream.of(LoadEntry.values()).map(SheetWriter::heading).forEach(headings::add);
        columns.given().stream().map(SheetWriter::heading).forEach(headings::add);
        columns.own().forEach(quantity -> headings.add(OWN + quantity.inFiles()));
        return headings;
    }

    /** What stands before the heading of an own figure. */
    static final String OWN = "my ";

    static String heading(final LoadEntry entry) {
        return "load " + entry.key().replace('-', ' ');
    }

    static String heading(final Quantity given) {
        return Vocabulary.CIRCUIT.contains(given) ? given.inFiles() : STRETCH + given.inFiles();
    }

    private static Stream<List<String>> rows(final Circuit circuit, final Columns columns) {
        final Load nothing = Load.named("");
        final List<Load> loads = circuit.loads().isEmpty() ? List.of(nothing) : circuit.loads();
        return Stream.concat(
                loads.stream().map(load -> row(circuit, load, columns)),
                circuit.stretches().stream().map(stretch -> row(circuit, stretch, columns)));
    }

    private static List<String> row(final Circuit circuit, final Load load, final Columns columns) {
        final List<String> cells =
                new ArrayList<>(
                        List.of(
                                circuit.name(),
                                load.name(),
                                circuit.colour(),
                                circuit.feed().circuit()));
        if (columns.feeds()) {
            cells.addAll(List.of(hasOwnFuse(circuit) ? "yes" : "", circuit.neverWith()));
        }
        if (columns.notes()) {
            cells.add(circuit.notes());
        }
        if (columns.places()) {
            cells.addAll(List.of(load.at(), "", ""));
        }
        addVolts(cells, columns);
        for (final LoadEntry entry : LoadEntry.values()) {
            cells.add(pointed(entry.quantity(), load.entries().text(entry)));
        }
        cells.addAll(pointed(columns.given(), circuit.part().given()));
        cells.addAll(pointed(columns.own(), circuit.part().answers()));
        return cells;
    }

    private static List<String> row(
            final Circuit circuit, final Stretch stretch, final Columns columns) {
        final List<String> cells = new ArrayList<>(List.of(circuit.name(), "", "", ""));
        if (columns.feeds()) {
            cells.addAll(List.of("", ""));
        }
        if (columns.notes()) {
            cells.add("");
        }
        cells.addAll(List.of("", stretch.from(), stretch.to()));
        addVolts(cells, columns);
        Stream.of(LoadEntry.values()).forEach(any -> cells.add(""));
        cells.addAll(pointed(columns.given(), stretch.given()));
        columns.own().forEach(any -> cells.add(""));
        return cells;
    }

    private static void addVolts(final List<String> cells, final Columns columns) {
        if (!columns.volts().isEmpty()) {
            cells.add(columns.volts());
        }
    }

    private static List<String> pointed(
            final List<Quantity> columns, final Entries<Quantity> entries) {
        return columns.stream().map(each -> pointed(each, entries.text(each))).toList();
    }

    /**
     * With a decimal point where that is the same figure: who reads the file takes its points and
     * commas for one thing throughout.
     */
    private static String pointed(final Quantity quantity, final String typed) {
        final String pointed = typed.replace(',', '.');
        return figure(quantity, typed).equals(figure(quantity, pointed)) ? pointed : typed;
    }

    /** The figure as it is read; what is none stands as it was typed. */
    private static String figure(final Quantity quantity, final String typed) {
        return quantity.numeric() && Understood.own(quantity, typed) instanceof Understood.Figure it
                ? it.text()
                : typed;
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
