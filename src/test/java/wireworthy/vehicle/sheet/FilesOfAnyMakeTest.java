package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.rules.Quantity.*;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.LoadEntry;

/** The same four circuits as programs and people write them: always read as the same. */
class FilesOfAnyMakeTest {
    private static final List<List<String>> CELLS =
            List.of(
                    List.of(
                            "Circuit",
                            "Load",
                            "Power (W)",
                            "Length one way (m)",
                            "Section (mm²)",
                            "Fuse (A)"),
                    List.of("House lamps, aft", "lamp", "24", "7.5", "2.5", "7.5"),
                    List.of("Projector", "projector", "310", "2.25", "10", "40"),
                    List.of("Ticket \"desk\"", "till", "36", "4", "2.5", "10"),
                    List.of("Heizgerät", "heater", "34.5", "3.5", "4", "7.5"));

    /** How a file is written. */
    private record Make(
            Charset charset, String mark, char separator, char point, String end, Style style) {
        private byte[] bytes() {
            final String text =
                    CELLS.stream().map(this::line).collect(Collectors.joining(end, mark, end));
            return text.getBytes(charset);
        }

        private String line(final List<String> cells) {
            return cells.stream()
                            .map(this::cell)
                            .collect(Collectors.joining(String.valueOf(separator)))
                    + style.after(separator);
        }

        private String cell(final String cell) {
            final boolean number = cell.matches("[0-9.]+");
            final String text = number ? cell.replace('.', point) : cell;
            final boolean needed = text.indexOf(separator) >= 0 || text.indexOf('"') >= 0;
            final String quoted = "\"" + text.replace("\"", "\"\"") + "\"";
            return switch (style) {
                case PLAIN, TRAILING -> needed ? quoted : text;
                case ALL_QUOTED -> quoted;
                case FORMULAS -> number ? "=" + quoted : needed ? quoted : text;
                case BLANKS -> needed ? quoted : " " + text + "  ";
            };
        }

        @Override
        public String toString() {
            return "%s%s, '%s', '%s', %s, %s"
                    .formatted(
                            charset,
                            mark.isEmpty() ? "" : " with mark",
                            separator == '\t' ? "tab" : separator,
                            point,
                            end.replace("\r", "CR").replace("\n", "LF"),
                            style);
        }
    }

    private enum Style {
        PLAIN,
        ALL_QUOTED,
        FORMULAS,
        BLANKS,
        TRAILING;

        private String after(final char separator) {
            return this == TRAILING ? String.valueOf(separator).repeat(3) : "";
        }
    }

    private static Stream<Make> makes() {
        final List<Make> makes = new ArrayList<>();
        for (final Style style : Style.values()) {
            for (final char separator : new char[] {',', ';', '\t', '|'}) {
                final char point = separator == ';' ? ',' : '.';
                makes.add(new Make(StandardCharsets.UTF_8, "", separator, point, "\n", style));
                makes.add(
                        new Make(
                                StandardCharsets.UTF_8, "\uFEFF", separator, point, "\r\n", style));
            }
            makes.add(new Make(StandardCharsets.UTF_16LE, "\uFEFF", '\t', ',', "\r\n", style));
            makes.add(new Make(StandardCharsets.UTF_16BE, "\uFEFF", ';', ',', "\n", style));
            makes.add(new Make(StandardCharsets.UTF_16LE, "", ';', ',', "\r\n", style));
            makes.add(new Make(Charset.forName("windows-1252"), "", ';', ',', "\r\n", style));
            makes.add(new Make(StandardCharsets.UTF_8, "sep=;\r\n", ';', ',', "\r\n", style));
            makes.add(new Make(StandardCharsets.UTF_8, "", ';', '.', "\r", style));
        }
        return makes.stream();
    }

    @ParameterizedTest
    @MethodSource("makes")
    void theSameCircuitsComeOut(final Make make) {
        final SheetImport taken = Sheets.taken(Sheets.read(make.bytes()));
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.circuits())
                .extracting(Circuit::name)
                .containsExactly("House lamps, aft", "Projector", "Ticket \"desk\"", "Heizgerät");
        final Circuit heater = taken.circuits().get(3);
        assertThat(heater.loads().get(0).entries().text(LoadEntry.POWER).replace(',', '.'))
                .isEqualTo("34.5 W");
        assertThat(heater.part().given().text(ONE_WAY_LENGTH).replace(',', '.')).isEqualTo("3.5 m");
        assertThat(heater.part().given().text(SECTION)).isEqualTo("4 mm²");
        assertThat(heater.part().given().text(FUSE).replace(',', '.')).isEqualTo("7.5 A");
    }
}
