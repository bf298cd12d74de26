package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FactTablesTest {

    static Stream<FactTable> tables() {
        return FactTables.all().stream();
    }

    @Test
    void everyDataFileIsListedAndEveryListedTableHasItsFile()
            throws IOException, URISyntaxException {
        final Path folder =
                Path.of(FactTables.class.getResource("boat-cable.csv").toURI()).getParent();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(
                            files.map(file -> file.getFileName().toString())
                                    .filter(name -> name.endsWith(".csv"))
                                    .map(name -> name.replace(".csv", "")))
                    .containsExactlyInAnyOrderElementsOf(FactTables.ids());
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void aTableSaysWhatItIsWhereItComesFromAndWhatItHoldsFor(final FactTable table) {
        assertThat(table.title()).isNotBlank();
        assertThat(table.scope()).isNotBlank();
        assertThat(table.source().title()).isNotBlank();
        assertThat(table.columns()).doesNotHaveDuplicates().noneMatch(String::isBlank);
        assertThat(table.notes()).allMatch(note -> note.endsWith("."));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyRowHasAStanding(final FactTable table) {
        assertThat(table.rows()).isNotEmpty().doesNotHaveDuplicates();
        assertThat(table.rows()).allSatisfy(row -> assertThat(table.sourceOf(row)).isNotNull());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void aTableStandsNoHigherThanItsWeakestRowUnlessANoteSaysSo(final FactTable table) {
        final boolean rowsDiffer =
                table.rows().stream()
                        .anyMatch(
                                row ->
                                        table.sourceOf(row).provenance()
                                                != table.source().provenance());
        assertThat(table.notes().stream().anyMatch(note -> note.startsWith("The rows differ")))
                .isEqualTo(rowsDiffer);
    }

    @Test
    void titlesTellTheTablesApart() {
        assertThat(tables().map(FactTable::title)).doesNotHaveDuplicates();
    }

    @Test
    void anUnknownTableIsAnsweredWithTheKnownOnes() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FactTables.named("no-such-table"))
                .withMessageContaining("no-such-table")
                .withMessageContaining("boat-cable");
    }

    @Test
    void aTableCannotBeChangedByItsReader() {
        final FactTable table = FactTables.named("fuse-colours");

        assertThat(table.rows()).isUnmodifiable();
        assertThat(table.rows().get(0)).isUnmodifiable();
    }

    @ParameterizedTest
    @CsvSource({
        "fuse-colours, 'Rating, A', 10, Colour, red",
        "fuse-colours, 'Rating, A', 30, Colour, green",
        "copper-temperature, 'Conductor, degC', 60, kt: divide by, 0.862",
        "vehicle-cable-resistance, 'Section, mm2', 2.5, 'Resistance, mohm/m', 7.6",
        "gauge-two-kinds, 'Gauge, AWG', 12, 'SAE area, circular mils', 5833",
        "gauge-resistance, 'Gauge, AWG', 12, 'Plain copper, ohm/1000 ft', 1.98",
        "trade-names-australia, Sold as, 4 mm, 'First source, mm2', 1.85",
        "aircraft-cable, 'Gauge, AWG', 8, A at 105 degC, 38",
        "aircraft-fuses, 'Gauge, AWG', 12, 'Fuse, A', 20",
        "aircraft-drop, 'Nominal, V', 28, 'Lost in steady use, V', 1",
        "boat-engine-space, 'Insulation, degC', 105, Multiply by, 0.85",
        "iso-10133-engine-space, 'Insulation, degC', 85 to 90, Multiply by, 0.82",
        "standard-wall, 'Section, mm2', 2.5, A at 70 degC, 21.75"
    })
    void aPublishedFigureStandsInItsTable(
            final String id,
            final String key,
            final String row,
            final String column,
            final String figure) {
        final FactTable table = FactTables.named(id);

        assertThat(table.rows())
                .filteredOn(cells -> table.cell(cells, key).equals(row))
                .extracting(cells -> table.cell(cells, column))
                .first()
                .isEqualTo(figure);
    }

    @Test
    void warmSurroundingsTablesFollowTheRootFormulaToAFewPerCent() {
        final FactTable table = FactTables.named("ambient-factors");
        final List<List<String>> rows =
                table.rows().stream()
                        .filter(row -> table.cell(row, "Surroundings, degC").matches("\\d+"))
                        .toList();

        assertThat(rows)
                .hasSizeGreaterThan(50)
                .allSatisfy(
                        row -> {
                            final double insulation = table.number(row, "Insulation, degC");
                            final double warm = table.number(row, "Surroundings, degC");
                            final double base = table.number(row, "Made for, degC");
                            assertThat(table.number(row, "Multiply by"))
                                    .isCloseTo(
                                            Math.sqrt((insulation - warm) / (insulation - base)),
                                            offset(0.02));
                        });
    }
}
