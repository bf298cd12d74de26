package wireworthy.window.check;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vocabulary;
import wireworthy.vehicle.sheet.Column;
import wireworthy.vehicle.sheet.Mapping;
import wireworthy.vehicle.sheet.RowOutcome;
import wireworthy.vehicle.sheet.Sheet;
import wireworthy.vehicle.sheet.SheetImport;
import wireworthy.vehicle.sheet.Target;

/** A spreadsheet before it is taken in: what its columns are taken for, and what comes of it. */
final class ImportModel {
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
                        Stream.of(Target.Word.values()),
                        Stream.of(LoadEntry.values()).map(Target.OfLoad::new),
                        Vocabulary.CIRCUIT.stream().map(Target.Given::new),
                        Stream.of(Quantity.values()).filter(Quantity::numeric).map(Target.Own::new))
                .flatMap(each -> each)
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
                rows,
                "circuits",
                result.get().circuits().size(),
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
        return many == 0 ? "" : CheckTexts.of("sheet.too-many", "count", many);
    }

    /** Puts the circuits after those of the vehicle; undo takes them all away again. */
    void takeIn() {
        vehicle.change("", result.get()::into);
    }
}
