package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.facts.CableTable.Row;

class CableTablesTest {

    static Stream<CableTable> tables() {
        return CableTables.all().stream();
    }

    @ParameterizedTest(name = "{0}: {1} mm2 in {2} degC insulation carries {3} A")
    @CsvSource({
        "thin-wall, 0.5, 105, 11",
        "thin-wall, 1.5, 105, 21",
        "thin-wall, 2.5, 105, 29",
        "thin-wall, 8.5, 105, 63",
        "standard-wall, 0.65, 70, 5.75",
        "standard-wall, 3, 70, 25.5",
        "iso-10133, 0.75, 60, 6",
        "iso-10133, 2.5, 70, 25",
        "iso-10133, 4, 105, 45",
        "iso-10133, 150, 200, 560"
    })
    void aSectionCarriesThePublishedCurrent(
            final String id, final double mm2, final double insulation, final double amps) {
        final CableTable table = CableTables.named(id);
        final Row row = table.rowFor(mm2).orElseThrow();

        assertThat(row.sectionMm2()).isEqualTo(mm2);
        assertThat(table.ampacity(row, insulation)).hasValue(amps);
    }

    @ParameterizedTest(name = "{0} AWG in {1} degC insulation carries {2} A")
    @CsvSource({
        "18, 60, 10",
        "12, 60, 25",
        "12, 105, 45",
        "10, 75, 40",
        "8, 90, 70",
        "4, 80, 130",
        "0, 105, 285",
        "-1, 125, 355",
        "-3, 200, 510"
    })
    void aGaugeCarriesThePublishedCurrent(
            final int gauge, final double insulation, final double amps) {
        final CableTable boat = CableTables.named("boat-cable");
        final Row row = boat.rowFor(Awg.areaMm2(gauge)).orElseThrow();

        assertThat(row.label()).isEqualTo(Awg.label(gauge));
        assertThat(boat.ampacity(row, insulation)).hasValue(amps);
    }

    @Test
    void the105DegreeBoatTableIsBaseTimesBundleTimesEngineSpace() {
        final CableTable boat = CableTables.named("boat-cable");
        final FactTable printed = FactTables.named("boat-cable-105-bundled");
        final double engineSpace = boat.engineSpaceFactor(105).orElseThrow();

        assertThat(printed.rows())
                .hasSize(56)
                .allSatisfy(
                        cells -> {
                            final double outside =
                                    base(boat, printed.cell(cells, "Gauge, AWG"))
                                            * BundleFactors.factor(
                                                    most(
                                                            printed.cell(
                                                                    cells,
                                                                    "Loaded conductors together")));
                            assertThat(printed.number(cells, "A outside an engine space"))
                                    .isCloseTo(outside, offset(0.1));
                            assertThat(printed.number(cells, "A inside an engine space"))
                                    .isCloseTo(outside * engineSpace, offset(0.1));
                        });
    }

    private static double base(final CableTable boat, final String gauge) {
        final double area = Awg.areaMm2(Awg.number(gauge).orElseThrow());
        return boat.ampacity(boat.rowFor(area).orElseThrow(), 105).orElseThrow();
    }

    private static double most(final String range) {
        final String[] ends = range.split(" to ");
        return Double.parseDouble(ends[ends.length - 1]);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void moreCopperAndHotterInsulationNeverCarryLess(final CableTable table) {
        assertThat(table.rows()).extracting(Row::sectionMm2).isSorted().doesNotHaveDuplicates();
        assertThat(table.insulationTemperatures()).isSorted();
        assertThat(table.rows()).allSatisfy(row -> assertThat(row.ampacities()).isSorted());
        for (int column = 0; column < table.insulationTemperatures().size(); column++) {
            final int each = column;
            assertThat(table.rows()).extracting(row -> row.ampacities().get(each)).isSorted();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "thin-wall, 105, 8.5, false, 1",
        "boat-cable, 105, 107.2193, true, 7",
        "iso-10133, 70, 150, false, 6",
        "standard-wall, 70, 3, false, 1"
    })
    void aTableHasItsDefaultInsulationItsLargestSectionAndItsColumns(
            final String id,
            final double insulation,
            final double largest,
            final boolean byGauge,
            final int columns) {
        final CableTable table = CableTables.named(id);

        assertThat(table.defaultInsulationTemperature()).isEqualTo(insulation);
        assertThat(table.largestSectionMm2()).isCloseTo(largest, offset(1e-4));
        assertThat(table.byGauge()).isEqualTo(byGauge);
        assertThat(table.insulationTemperatures()).hasSize(columns).contains(insulation);
    }

    @ParameterizedTest
    @CsvSource({"2.6, 2.5", "2.4999999999, 2.5", "2.49, 2", "70, 8.5"})
    void aSectionOffTheTableTakesTheNextLowerUsableRow(final double mm2, final double row) {
        assertThat(CableTables.named("thin-wall").rowFor(mm2).orElseThrow().sectionMm2())
                .isEqualTo(row);
    }

    @Test
    void aSectionBelowTheTableHasNoRow() {
        assertThat(CableTables.named("thin-wall").rowFor(0.4)).isEmpty();
        assertThat(CableTables.named("thin-wall").rowFor(Double.NaN)).isEmpty();
    }

    @Test
    void batteryCableRowsAreKeptButNotUsable() {
        final CableTable table = CableTables.named("thin-wall");

        assertThat(table.rows()).extracting(Row::sectionMm2).contains(70.0).hasSize(20);
        assertThat(table.usableRows()).extracting(Row::sectionMm2).contains(8.5).hasSize(11);
    }

    @Test
    void insulationOffTheTableTakesTheNextLowerColumn() {
        final CableTable boat = CableTables.named("boat-cable");
        final Row twelve = boat.rowFor(Awg.areaMm2(12)).orElseThrow();

        assertThat(boat.ampacity(twelve, 100)).hasValue(40);
        assertThat(boat.insulationColumn(100)).hasValue(90);
        assertThat(boat.ampacity(twelve, 59)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "boat-cable, 60, 0.58",
        "boat-cable, 75, 0.75",
        "boat-cable, 105, 0.85",
        "boat-cable, 110, 0.85",
        "boat-cable, 200, 1",
        "iso-10133, 70, 0.75",
        "iso-10133, 85, 0.82",
        "iso-10133, 90, 0.82",
        "iso-10133, 105, 0.86",
        "iso-10133, 125, 0.89"
    })
    void aBoatTableHasItsOwnEngineSpaceFactors(
            final String id, final double insulation, final double factor) {
        assertThat(CableTables.named(id).engineSpaceFactor(insulation)).hasValue(factor);
    }

    @Test
    void noEngineSpaceFactorIsMadeUp() {
        assertThat(CableTables.named("thin-wall").engineSpaceFactor(105)).isEmpty();
        assertThat(CableTables.named("iso-10133").engineSpaceFactor(60)).isEmpty();
    }

    @Test
    void aFigureKeepsItsStanding() {
        final CableTable boat = CableTables.named("boat-cable");
        final CableTable thin = CableTables.named("thin-wall");

        assertThat(boat.rows()).extracting(Row::source).containsOnly(boat.source());
        assertThat(boat.source().text()).isEqualTo("33 CFR 183.425 Table 5");
        assertThat(boat.engineSpace(105).orElseThrow().source().provenance())
                .isEqualTo(Provenance.READ);
        assertThat(boat.engineSpace(90).orElseThrow().source().provenance())
                .isEqualTo(Provenance.MEMORY);
        assertThat(thin.source().text()).endsWith("(common practice, no source)");
        assertThat(CableTables.named("iso-10133").source().text())
                .endsWith("(from memory, unconfirmed)");
    }

    @Test
    void anUnknownTableIsAnsweredWithTheKnownOnes() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CableTables.named("thick-wall"))
                .withMessage(
                        "There is no cable table \"thick-wall\". Known: "
                                + String.join(
                                        ", ",
                                        List.of(
                                                "thin-wall",
                                                "boat-cable",
                                                "iso-10133",
                                                "standard-wall")));
    }
}
