package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.rules.Quantity.*;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;

/**
 * Three spreadsheets as LibreOffice 7.4 Calc wrote them, each with other settings of its CSV export
 * (named by the folder). One has decimal points, formulas, percentages and dates, one the same with
 * decimal commas, one is as people keep it: a title, units in cells, line breaks, a sum.
 */
class LibreOfficeFilesTest {
    private static final String FOLDER = "/wireworthy/sheets/libreoffice";

    private static Stream<Path> files(final String name) throws IOException, URISyntaxException {
        final Path folder =
                Path.of(
                        Objects.requireNonNull(LibreOfficeFilesTest.class.getResource(FOLDER))
                                .toURI());
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.endsWith(name)).sorted().toList().stream();
        }
    }

    static Stream<Path> figures() throws IOException, URISyntaxException {
        return Stream.concat(files("plain.csv"), files("comma.csv"));
    }

    static Stream<Path> byHand() throws IOException, URISyntaxException {
        return files("messy.csv");
    }

    @Test
    void thereAreManySettings() throws IOException, URISyntaxException {
        assertThat(Stream.concat(figures(), byHand())).hasSize(45);
    }

    @ParameterizedTest
    @MethodSource("figures")
    void figuresComeOutWhateverTheSettings(final Path file) throws IOException {
        final SheetImport taken = Sheets.taken(Sheets.read(Files.readAllBytes(file)));
        assertThat(taken.circuits())
                .extracting(Circuit::name)
                .startsWith("House lamps, aft", "Projector", "Ticket desk")
                .hasSize(4);
        assertThat(taken.rows().get(5).kind()).isEqualTo(RowOutcome.Kind.LEFT_OUT);
        final Circuit projector = taken.circuits().get(1);
        final Load load = projector.loads().get(0);
        assertThat(load.name()).isEqualTo("projector \"A\"");
        assertThat(points(load.entries().text(LoadEntry.EFFICIENCY))).isIn("88%", "88 %");
        assertThat(points(load.entries().text(LoadEntry.POWER))).isIn("1310 W", "1310.00 W");
        assertThat(points(projector.part().given().text(ONE_WAY_LENGTH))).isEqualTo("2.25 m");
        assertThat(points(taken.circuits().get(3).part().given().text(FUSE)))
                .isIn("7.5 A", "7.50 A");
        assertThat(taken.rows().get(4).reason())
                .as("a sum divided by nothing, or a formula")
                .startsWith("your circuit current: ");
    }

    private static String points(final String typed) {
        return typed.replace(',', '.');
    }

    @ParameterizedTest
    @MethodSource("byHand")
    void whatPeopleWriteComesOutWhateverTheSettings(final Path file) throws IOException {
        final SheetImport taken = Sheets.taken(Sheets.read(Files.readAllBytes(file)));
        assertThat(Sheets.kinds(taken))
                .containsExactly(
                        RowOutcome.Kind.BEFORE,
                        RowOutcome.Kind.EMPTY,
                        RowOutcome.Kind.HEADINGS,
                        RowOutcome.Kind.TAKEN,
                        RowOutcome.Kind.TAKEN,
                        RowOutcome.Kind.TAKEN,
                        RowOutcome.Kind.EMPTY,
                        RowOutcome.Kind.TAKEN,
                        RowOutcome.Kind.LEFT_OUT);
        assertThat(taken.circuits())
                .extracting(Circuit::name)
                .containsExactly("pump", "fridge", "amplifier; the old one", "fan");
        assertThat(taken.circuits())
                .extracting(circuit -> circuit.part().given().text(LOOP_LENGTH))
                .isEqualTo(List.of("10 m", "9 m", "12 m", "5 m"));
        assertThat(taken.circuits().get(3).loads().get(0).entries().text(LoadEntry.CURRENT))
                .isEqualTo("250 mA");
    }
}
