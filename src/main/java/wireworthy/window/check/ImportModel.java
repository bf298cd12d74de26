package wireworthy.window.check;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.Vocabulary;
import wireworthy.vehicle.sheet.Column;
import wireworthy.vehicle.sheet.Mapping;
import wireworthy.vehicle.sheet.RowOutcome;
import wireworthy.vehicle.sheet.Sheet;
import wireworthy.vehicle.sheet.SheetImport;
import wireworthy.vehicle.sheet.Target;

/** A spreadsheet before it is taken in: what its columns are taken for, and what comes of it. */
final class ImportModel {
    /** What most columns are about; they stand first in the choice. */
    private static final List<Target> LIKELY =
            List.of(
                    Target.Word.NOTHING,
                    Target.Word.CIRCUIT,
                    Target.Word.LOAD,
                    new Target.OfLoad(LoadEntry.POWER),
                    new Target.OfLoad(LoadEntry.CURRENT),
                    new Target.OfLoad(LoadEntry.COUNT),
                    new Target.Given(Quantity.ONE_WAY_LENGTH),
                    new Target.Given(Quantity.SECTION),
                    new Target.Given(Quantity.FUSE),
                    Target.OfVehicle.VOLTS,
                    new Target.Own(Quantity.CIRCUIT_CURRENT),
                    new Target.Own(Quantity.FUSE_FLOOR),
                    new Target.Own(Quantity.DROP),
                    new Target.Own(Quantity.DROP_PERCENT));

    private final VehicleModel vehicle;
    private final Sheet sheet;
    private final ReadOnlyObjectWrapper<SheetImport> result;

    ImportModel(final VehicleModel vehicle, final Sheet sheet) {
        this.vehicle = vehicle;
        this.sheet = sheet;
        result = new ReadOnlyObjectWrapper<>(SheetImport.of(sheet, Mapping.guess(sheet)));
    }

    /** Takes a column for something else. */
    void take(final int column, final Target target) {
        result.set(SheetImport.of(sheet, result.get().mapping().with(column, target)));
    }

    /** Takes the cells of a column that name no unit for another one. */
    void takeUnit(final int column, final String unit) {
        result.set(SheetImport.of(sheet, result.get().mapping().withUnit(column, unit)));
    }

    /** What comes of the spreadsheet. */
    ReadOnlyObjectProperty<SheetImport> result() {
        return result.getReadOnlyProperty();
    }

    List<Column> columns() {
        return result.get().mapping().columns();
    }

    /** What a column may be taken for. */
    static List<Target> targets() {
        return Stream.<Stream<Target>>of(
                        LIKELY.stream(),
                        Stream.of(Target.Word.values()),
                        Stream.of(LoadEntry.values()).map(Target.OfLoad::new),
                        Vocabulary.CIRCUIT.stream().map(Target.Given::new),
                        Stream.of(Quantity.values()).filter(Quantity::numeric).map(Target.Own::new))
                .flatMap(each -> each)
                .distinct()
                .toList();
    }

    /** What stands first under the heading of a column, as an example. */
    String example(final Column column) {
        return sheet.rows().stream()
                .skip(Math.max(0, result.get().mapping().headingRow() + 1L))
                .map(row -> row.cell(column.index()))
                .filter(cell -> !cell.isBlank())
                .findFirst()
                .orElse("");
    }

    /** How many rows there are and what became of them; none is left out of the count. */
    String summary() {
        final Map<RowOutcome.Kind, Long> counts =
                result.get().rows().stream()
                        .collect(
                                Collectors.groupingBy(
                                        RowOutcome::kind,
                                        () -> new EnumMap<>(RowOutcome.Kind.class),
                                        Collectors.counting()));
        final long rows = result.get().rows().size();
        final long taken = counts.getOrDefault(RowOutcome.Kind.TAKEN, 0L);
        final long inPart = counts.getOrDefault(RowOutcome.Kind.IN_PART, 0L);
        final long out = counts.getOrDefault(RowOutcome.Kind.LEFT_OUT, 0L);
        return CheckTexts.of(
                "sheet.summary",
                "rows",
                CheckTexts.counted("sheet.rows", (int) rows),
                "circuits",
                counted(),
                "taken",
                taken,
                "part",
                inPart,
                "out",
                out,
                "others",
                rows - taken - inPart - out);
    }

    /** Why not all circuits fit; empty where they do. */
    String tooMany() {
        final int many = result.get().tooMany(vehicle.now());
        return many == 0
                ? ""
                : CheckTexts.of(
                        "sheet.too-many", "circuits", CheckTexts.counted("sheet.circuits", many));
    }

    /** Which voltage the circuits will be worked at, where the file says one. */
    String volts() {
        final SheetImport now = result.get();
        final String key =
                vehicle.now().circuits().isEmpty() ? "sheet.volts.set" : "sheet.volts.kept";
        return now.volts().isEmpty()
                ? ""
                : now.otherVolts(vehicle.now())
                        .map(its -> volts(key, its))
                        .orElseGet(() -> volts("sheet.volts", ""));
    }

    private String volts(final String key, final String its) {
        return CheckTexts.of(
                key,
                "vehicle",
                open(),
                "file",
                Understood.of(Quantity.SUPPLY_VOLTAGE, result.get().volts()).text(),
                "volts",
                Understood.of(Quantity.SUPPLY_VOLTAGE, its).text());
    }

    /** Whether the vehicle that is open is fed at another voltage than the file says. */
    boolean otherVolts() {
        return result.get().otherVolts(vehicle.now()).isPresent();
    }

    private String counted() {
        return CheckTexts.counted("sheet.circuits", result.get().circuits().size());
    }

    /** Whether it has to be asked where they go: the vehicle that is open has circuits. */
    boolean asks() {
        return !vehicle.now().circuits().isEmpty();
    }

    /** Where the circuits can go. */
    String where() {
        return CheckTexts.of(
                asks() ? "sheet.where" : "sheet.where.empty",
                "vehicle",
                open(),
                "circuits",
                CheckTexts.counted("sheet.circuits", vehicle.now().circuits().size()));
    }

    /** What the circuits go by where the file says nothing. */
    String goBy() {
        return CheckTexts.of(
                "sheet.go-by",
                "table",
                vehicle.sums().cableTable(),
                "limit",
                FigureText.of(vehicle.sums().dropLimit(), Dimension.SHARE));
    }

    /** The name of the vehicle that is open. */
    String open() {
        return vehicle.now().name();
    }

    /** Puts the circuits after those of the vehicle; undo takes them all away again. */
    void takeIn() {
        final String other = otherVolts() ? " " + volts() : "";
        vehicle.change("", this::into);
        vehicle.tell(
                CheckTexts.of("sheet.taken", "vehicle", open(), "circuits", counted()) + other);
    }

    /** Those that come go by the person's sums where the file says nothing. */
    private Vehicle into(final Vehicle before) {
        Vehicle after = result.get().into(before);
        for (int i = before.circuits().size(); i < after.circuits().size(); i++) {
            after = after.withCircuit(i, NewCircuit.by(after.circuits().get(i), vehicle.sums()));
        }
        return after;
    }

    /** Puts the circuits into a new vehicle; the one that was open stays as it is. */
    void takeAsNew() {
        final String before = open();
        vehicle.begin();
        vehicle.change("", this::into);
        vehicle.tell(
                CheckTexts.of(
                        "sheet.taken-new",
                        "vehicle",
                        open(),
                        "circuits",
                        counted(),
                        "before",
                        before));
    }
}
