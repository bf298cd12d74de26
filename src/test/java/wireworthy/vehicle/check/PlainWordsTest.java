package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.vehicle.Heron;
import wireworthy.working.Assumed;
import wireworthy.working.Caution;

/** What is said of the example can be read in one way only. */
class PlainWordsTest {
    private static final CheckedVehicle HERON = Checked.check(Heron.vehicle());

    private static List<String> cautions() {
        return HERON.circuits().stream()
                .flatMap(each -> each.cautions().stream())
                .map(Caution::text)
                .toList();
    }

    @Test
    void ratingsThatFitAreListedAsInASentence() {
        assertThat(HERON.mainFuse().text())
                .endsWith("160 A: 100, 125 and 150 A fit (strip fuse 51 mm).");
        assertThat(HERON.circuits().get(3).fuse().text()).endsWith("11 A: 10 A fits (blade).");
    }

    @Test
    void whatIsToBeThickerIsTheCable() {
        assertThat(cautions())
                .anyMatch(text -> text.contains("or take a thicker cable"))
                .noneMatch(text -> text.contains("thicker one"));
    }

    @Test
    void whatKeepsTheLimitInWarmCableKeepsNothingWarm() {
        assertThat(cautions())
                .anyMatch(
                        text ->
                                text.endsWith(
                                        "With 1.5 mm², or with a run of at most 7.5 m one way,"
                                                + " the limit is kept in warm cable as well."))
                .noneMatch(text -> text.contains("holds it warm"));
    }

    @Test
    void whatIsAssumedIsSaidOnceAndWithWhatIsCounted() {
        assertThat(HERON.circuits().get(0).assumed())
                .extracting(Assumed::text)
                .contains("cable table thin-wall", "2 conductors lying together");
    }

    private static CheckedCircuit pump(final String fuse) {
        return Checked.circuit(
                """
                {"name": "Pump", "given": {"loads": [{"current": "6 A"}],
                 "one-way-length": "3 m", "section": "2.5 mm2", "fuse": "%s"}}
                """
                        .formatted(fuse));
    }

    /** 6 A flow; the floor is 7.5 A and the ceiling 29 A. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7 A | it may open though nothing is wrong. Where the maker of the appliance names it, that holds.",
                "5 A | is below the 6 A that flow here: it opens in normal use, sooner or later.",
            })
    void aFuseThatIsTooSmallOpensWhoeverNamesIt(final String fuse, final String said) {
        assertThat(pump(fuse).cautions())
                .filteredOn(it -> it.id().equals("fuse-below-floor"))
                .singleElement()
                .extracting(Caution::text)
                .asString()
                .contains(said);
    }

    @ParameterizedTest
    @CsvSource({"50 A, false", "6 A, true"})
    void aFuseAboveTheCableIsNotSavedByItsSeries(final String fuse, final boolean may) {
        assertThat(pump(fuse).notes())
                .singleElement()
                .extracting(FieldNote::text)
                .satisfies(
                        text -> {
                            assertThat(text).contains("The series blade has no fuse of");
                            assertThat(text.contains("name the series")).isEqualTo(may);
                        });
    }

    @Test
    void aLargerCableIsNamedByGaugeWhereItsTableGoesByGauge() {
        final CheckedCircuit pump =
                Checked.circuit(
                        """
                        {"name": "Bilge pump", "given": {"loads": [{"power": "60 W"}],
                         "one-way-length": "15 ft", "section": "14 AWG",
                         "cable-table": "boat-cable"}}
                        """);
        assertThat(pump.ways())
                .extracting(Way::text)
                .anyMatch(text -> text.startsWith("Take a larger section: 12 AWG (3.309 mm²)"));
    }
}
