package wireworthy.window.check;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Understood;

/** A circuit in one line, as a spreadsheet has it: what hangs on it, its cable, own figures. */
final class CircuitLine {
    private CircuitLine() {}

    /** A circuit as it is taken in, in one line. */
    static String of(final Circuit circuit) {
        final Stream<String> loads = circuit.loads().stream().map(CircuitLine::drawn);
        final Stream<String> given =
                circuit.part().given().typed().entrySet().stream().map(CircuitLine::read);
        final Stream<String> own =
                circuit.part().answers().typed().entrySet().stream()
                        .map(
                                each ->
                                        CheckTexts.of(
                                                "sheet.yours",
                                                "quantity",
                                                each.getKey().words(),
                                                "figure",
                                                Understood.own(each.getKey(), each.getValue())
                                                        .text()));
        return CheckTexts.of(
                "sheet.circuit",
                "name",
                circuit.name(),
                "figures",
                Stream.of(loads, given, own, along(circuit))
                        .flatMap(each -> each)
                        .collect(Collectors.joining(CheckTexts.of("sheet.comma"))));
    }

    private static Stream<String> along(final Circuit circuit) {
        return circuit.isNetwork()
                ? Stream.of(CheckTexts.counted("several.short", circuit.stretches().size()))
                : Stream.empty();
    }

    /** "8 × 3.5 W". */
    private static String drawn(final Load load) {
        final String count = load.entries().text(LoadEntry.COUNT);
        final String others =
                load.entries().typed().entrySet().stream()
                        .filter(each -> each.getKey() != LoadEntry.COUNT)
                        .map(each -> shown(each.getKey().quantity(), each.getValue()))
                        .collect(Collectors.joining(CheckTexts.of("sheet.comma")));
        return count.isEmpty() ? others : count + " × " + others;
    }

    private static String read(final Map.Entry<Quantity, String> given) {
        return shown(given.getKey(), given.getValue());
    }

    private static String shown(final Quantity quantity, final String text) {
        final String read = Understood.of(quantity, text).text();
        return quantity == Quantity.FUSE ? CheckTexts.of("sheet.fuse", "fuse", read) : read;
    }
}
