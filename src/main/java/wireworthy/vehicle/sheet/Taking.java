package wireworthy.vehicle.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Vehicle;

/** The circuits as they come together, row by row. */
final class Taking {
    private static final Pattern SUM =
            Pattern.compile("(grand |sub)?-?(total|totals|sum|sums|summe|gesamt)\\b.*");

    private static final String BETWEEN_NOTES = "; ";

    private final Mapping mapping;
    private final Cells cells;
    private final boolean loadsNamed;
    private final List<RowOutcome> rows = new ArrayList<>();
    private final Map<String, Integer> byName = new LinkedHashMap<>();
    private final List<Circuit> circuits = new ArrayList<>();
    private String volts;

    /**
     * @param volts of the supply as a title says them; empty where none does
     */
    Taking(final Mapping mapping, final Cells cells, final String volts) {
        this.volts = volts;
        this.mapping = mapping;
        this.cells = cells;
        this.loadsNamed = mapping.of(Target.Word.LOAD).isPresent();
    }

    List<RowOutcome> rows() {
        return rows;
    }

    /** Of the supply, as text; empty where no row says. */
    String volts() {
        return volts;
    }

    List<Circuit> circuits() {
        return circuits;
    }

    void row(final SheetRow row, final int index) {
        rows.add(outcome(row, index));
    }

    private RowOutcome outcome(final SheetRow row, final int index) {
        if (row.isEmpty()) {
            return RowOutcome.without(row, RowOutcome.Kind.EMPTY, "");
        }
        if (index <= mapping.headingRow()) {
            return RowOutcome.without(
                    row,
                    index == mapping.headingRow()
                            ? RowOutcome.Kind.HEADINGS
                            : RowOutcome.Kind.BEFORE,
                    "");
        }
        return row.problem().isEmpty() ? taken(row, cells.of(row)) : leftOut(row, row.problem());
    }

    private static RowOutcome leftOut(final SheetRow row, final String why) {
        return RowOutcome.without(row, RowOutcome.Kind.LEFT_OUT, why);
    }

    private RowOutcome taken(final SheetRow row, final List<CellRead> read) {
        final String name = CellRead.word(read, Target.Word.CIRCUIT);
        final String load = CellRead.word(read, Target.Word.LOAD);
        if (read.stream().anyMatch(Taking::unreadableName)) {
            return leftOut(row, SheetTexts.of("row.name"));
        }
        if (isSum(name) || isSum(load)) {
            return leftOut(row, SheetTexts.of("row.sum"));
        }
        if (!StretchRow.is(read)
                && read.stream().allMatch(cell -> !ofCircuit(cell.column().target()))) {
            return leftOut(row, SheetTexts.of("row.no-figure"));
        }
        if (name.isEmpty() && (!loadsNamed || circuits.isEmpty())) {
            return leftOut(row, SheetTexts.of("row.no-circuit"));
        }
        return into(row, read, name, load);
    }

    private static boolean ofCircuit(final Target target) {
        return !(target instanceof Target.Word || target instanceof Target.OfVehicle);
    }

    private static boolean unreadableName(final CellRead cell) {
        return cell.column().target() == Target.Word.CIRCUIT && !cell.problem().isEmpty();
    }

    private static boolean isSum(final String name) {
        return SUM.matcher(name.toLowerCase(Locale.ROOT)).matches();
    }

    /** Rows that name no circuit, or one named before, go on with it. */
    private RowOutcome into(
            final SheetRow row, final List<CellRead> read, final String name, final String load) {
        final int known = known(name);
        final Circuit circuit =
                known >= 0 && known < circuits.size() ? circuits.get(known) : Circuit.named(name);
        final Optional<String> conflict =
                otherVolts(read)
                        .or(
                                () ->
                                        StretchRow.is(read)
                                                ? StretchRow.trouble(circuit, read)
                                                : conflict(circuit, read));
        if (conflict.isPresent()) {
            return leftOut(row, conflict.get());
        }
        if (known == circuits.size()) {
            circuits.add(Circuit.named(name));
            byName.putIfAbsent(name, known);
        }
        final Circuit filled =
                StretchRow.is(read)
                        ? StretchRow.into(circuit, read)
                        : LoadRow.into(circuit, read, load.isEmpty() ? name : load);
        circuits.set(known, filled.withNotes(notes(circuit, read)));
        volts(read).filter(cell -> volts.isEmpty()).ifPresent(cell -> volts = cell.kept());
        return done(row, read, known);
    }

    private static Optional<CellRead> volts(final List<CellRead> read) {
        return read.stream()
                .filter(cell -> cell.column().target().equals(Target.OfVehicle.VOLTS))
                .filter(cell -> cell.problem().isEmpty())
                .findFirst();
    }

    /** A vehicle is fed at one voltage: what is made for another must not be worked at it. */
    private Optional<String> otherVolts(final List<CellRead> read) {
        return volts(read)
                .filter(cell -> !volts.isEmpty() && !SheetImport.same(volts, cell.kept()))
                .map(
                        cell ->
                                SheetTexts.of(
                                        "row.volts",
                                        "volts",
                                        cell.understood(),
                                        "before",
                                        SheetImport.understood(volts)));
    }

    private int known(final String name) {
        if (name.isEmpty()) {
            return circuits.size() - 1;
        }
        return loadsNamed ? byName.getOrDefault(name, circuits.size()) : circuits.size();
    }

    /** Two rows of one circuit must not say different things of its cable. */
    private static Optional<String> conflict(final Circuit circuit, final List<CellRead> read) {
        if (circuit.loads().size() >= Vehicle.MOST_LOADS) {
            return Optional.of(SheetTexts.of("row.loads", "most", Vehicle.MOST_LOADS));
        }
        if (read.stream().anyMatch(StretchRow::isAlone)) {
            return Optional.of(SheetTexts.of("row.resistance"));
        }
        if (notes(circuit, read).length() > Vehicle.LONGEST_NOTES) {
            return Optional.of(SheetTexts.of("row.notes", "most", Vehicle.LONGEST_NOTES));
        }
        return read.stream()
                .filter(cell -> contradicts(circuit, cell))
                .map(
                        cell ->
                                SheetTexts.of(
                                        "row.another",
                                        "circuit",
                                        circuit.name(),
                                        "target",
                                        cell.column().target().words()))
                .findFirst();
    }

    /** Those of all its rows, each of them once. */
    private static String notes(final Circuit circuit, final List<CellRead> read) {
        final String before = circuit.notes();
        final String more = CellRead.word(read, Target.Word.NOTES);
        if (before.isEmpty() || more.isEmpty()) {
            return before + more;
        }
        return List.of(before.split(BETWEEN_NOTES)).contains(more) || before.equals(more)
                ? before
                : before + BETWEEN_NOTES + more;
    }

    private static boolean contradicts(final Circuit circuit, final CellRead cell) {
        if (cell.column().target() instanceof Target.Given given) {
            final String before = circuit.part().given().text(given.quantity());
            return !before.isEmpty() && !before.equals(cell.kept());
        }
        return false;
    }

    private static RowOutcome done(
            final SheetRow row, final List<CellRead> read, final int circuit) {
        final String reason =
                read.stream()
                        .filter(cell -> !cell.problem().isEmpty())
                        .map(cell -> cell.column().target().words() + ": " + cell.problem())
                        .collect(Collectors.joining("; "));
        return new RowOutcome(
                row.line(),
                reason.isEmpty() ? RowOutcome.Kind.TAKEN : RowOutcome.Kind.IN_PART,
                circuit,
                read,
                reason);
    }
}
