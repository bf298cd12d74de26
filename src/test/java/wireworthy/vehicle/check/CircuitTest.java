package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.marking.Marker;
import wireworthy.rules.Quantity;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/** One circuit on 12 V: every value reckoned here a second time, by hand. */
class CircuitTest {
    private static final Offset<Double> CLOSE = within(1e-9);
    private static final String LAMPS =
            """
            {"name": "Lamps", "given": {
               "loads": [{"name": "reading lamp", "power": "6 W", "count": "4"},
                         {"name": "strip", "current": "1,5 A", "start-multiple": "2"}],
               "one-way-length": "5 m", "section": "1.5 mm2", "fuse": "5 A"},
             "answers": {"circuit-current": "3.5 A", "drop": "0.2 V", "runtime": "3 h"}}
            """;

    @Test
    void currentFuseAndDropAreWorked() {
        final CheckedCircuit lamps = Checked.circuit(LAMPS);
        final double amps = 4 * 6 / 12.0 + 1.5;
        final double drop = amps * 0.0172 * 2 * 5 / 1.5;
        assertThat(lamps.value(CIRCUIT_CURRENT)).hasValueCloseTo(amps, CLOSE);
        assertThat(lamps.value(START_CURRENT)).hasValueCloseTo(amps + 1.5, CLOSE);
        assertThat(lamps.value(DROP)).hasValueCloseTo(drop, CLOSE);
        assertThat(lamps.value(DROP_PERCENT)).hasValueCloseTo(drop / 12, CLOSE);
        assertThat(lamps.dropLimit()).hasValueCloseTo(0.36, CLOSE);
        assertThat(lamps.fuse().floor()).hasValueCloseTo(1.25 * amps, CLOSE);
        assertThat(lamps.fuse().ceiling()).hasValue(21);
        assertThat(lamps.fuse().between()).containsExactly(5.0, 7.5, 10.0, 15.0, 20.0);
        assertThat(lamps.fuse().inUse()).hasValue(5);
    }

    @Test
    void theDropOfARealCableThatHasGrownWarmStandsBesideIt() {
        final CheckedCircuit lamps = Checked.circuit(LAMPS);
        final double warm = 3.5 * 10 * 0.0133 * (1 + 0.00393 * 40);
        assertThat(lamps.warmDrop()).hasValueCloseTo(warm, CLOSE);
        assertThat(Checked.ids(lamps.cautions())).containsExactly("drop-over-limit");
    }

    @Test
    void ownFiguresAreMarkedAndExplained() {
        final CheckedCircuit lamps = Checked.circuit(LAMPS);
        assertThat(lamps.mark(CIRCUIT_CURRENT).orElseThrow().isSound()).isTrue();
        assertThat(Marker.ids(lamps.mark(DROP).orElseThrow()).get(0))
                .containsExactly("one-way-length");
        assertThat(lamps.mark(DROP).orElseThrow().explanation()).contains("0.4013 V");
        assertThat(lamps.notesAt("answers.runtime"))
                .extracting(FieldNote::text)
                .first()
                .asString()
                .startsWith("It can't be checked yet: ");
    }

    /** What is missing is said as the form has it, not as the question format has it. */
    @Test
    void nothingSaidHoldsAnIdOfTheFormat() {
        final String circuit =
                """
                {"name": "Lamps", "given": {"loads": [{"name": "l", "power": "24 W"}],
                    "one-way-length": "5 m", "section": "25 mm2"},
                 "answers": {"circuit-current": "2 A", "drop": "0.1 V", "fuse-ceiling": "20 A",
                    "standard-section": "4 mm2"}}
                """;
        final CheckedCircuit lamps =
                Checked.check(Checked.read("{}", "{}", circuit)).circuits().get(0);
        final List<String> said =
                Stream.concat(
                                lamps.notes().stream().map(FieldNote::text),
                                lamps.found().stream().map(Found::why))
                        .toList();
        assertThat(said).anyMatch(text -> text.contains("give also: supply voltage"));
        for (final Quantity quantity : Quantity.values()) {
            if (quantity.id().contains("-") && !quantity.words().contains(quantity.id())) {
                assertThat(said).noneMatch(text -> text.contains(quantity.id()));
            }
        }
    }

    /** The voltage is asked for once, and the current of the main fuse is that of the circuits. */
    @Test
    void whatIsMissingInOnePlaceIsAskedForThere() {
        final CheckedVehicle van =
                Checked.check(
                        Checked.read(
                                "{}",
                                "{}",
                                """
                                {"name": "Lamps", "given": {"section": "1 mm2",
                                   "loads": [{"name": "l", "power": "24 W"}]}}
                                """));
        assertThat(van.supply().notes())
                .extracting(FieldNote::where)
                .containsOnlyOnce("given.supply-voltage")
                .doesNotContain("given.battery-voltage");
        assertThat(van.main().notes())
                .extracting(FieldNote::text)
                .noneMatch(text -> text.contains("circuit current"))
                .anyMatch(text -> text.startsWith("What all circuits take together"));
    }

    @Test
    void whereNoTableTellsWhatACableCarriesNoFuseIsSaidToProtectIt() {
        final CheckedCircuit winch =
                Checked.circuit(
                        """
                        {"name": "Winch", "given": {"loads": [{"name": "winch", "power": "1200 W"}],
                           "one-way-length": "2 m", "section": "25 mm2", "fuse": "200 A"}}
                        """);
        assertThat(winch.fuse().ceiling()).isEmpty();
        assertThat(winch.notesAt("given.section"))
                .extracting(FieldNote::text)
                .singleElement()
                .asString()
                .startsWith("No fuse can be said to protect this cable: ")
                .contains("8.5 mm2");
    }

    /** V of 3.5 A in 10 m of 13.3 mohm/m (IEC 60228, class 5, 1.5 mm2) at 60 degC. */
    private static final double WARM = 3.5 * 10 * 0.0133 * (1 + 0.00393 * 40);

    @Test
    void eachWayOutOfTooMuchDropHasItsNumberAndItsCopper() {
        final CheckedCircuit lamps = Checked.circuit(LAMPS);
        final double now = 1.5e-6 * 10 * 8890;
        final double cut = Math.floor(10 * 5 * 0.36 / WARM) / 10;
        assertThat(lamps.ways())
                .extracting(way -> way.remedy().id())
                .containsExactly(
                        "shorter-run", "split-circuit", "larger-section", "higher-voltage");
        assertThat(copper(lamps, 0)).isCloseTo(now * (cut / 5 - 1), CLOSE);
        assertThat(copper(lamps, 1)).isCloseTo(now, CLOSE);
        assertThat(copper(lamps, 2)).isCloseTo(now * (2.5 / 1.5 - 1), CLOSE);
        assertThat(copper(lamps, 3)).isZero();
        assertThat(lamps.ways().get(2).text()).contains("2.5 mm²").endsWith("89 g more copper.");
    }

    private static double copper(final CheckedCircuit circuit, final int way) {
        return circuit.ways().get(way).copper().orElseThrow();
    }

    @Test
    void aFuseAboveTheCableIsSaidFirst() {
        final CheckedCircuit hot =
                Checked.circuit(
                        """
                        {"name": "Pump", "given": {"loads": [{"name": "pump", "power": "60 W"}],
                           "one-way-length": "9 m", "section": "1 mm2", "fuse": "20 A",
                           "ambient-temperature": "60 degC", "bundled": "6"}}
                        """);
        assertThat(Checked.ids(hot.cautions())).startsWith("fuse-above-cable");
        assertThat(hot.fuse().chosenAboveCeiling()).isTrue();
        assertThat(hot.fuse().ceiling()).hasValueCloseTo(16.5 * 0.6 * Math.sqrt(45 / 75.0), CLOSE);
    }

    @Test
    void whereNoRatingFitsItSaysWhy() {
        final CheckedCircuit tight =
                Checked.circuit(
                        """
                        {"name": "Winch", "given": {"loads": [{"name": "w", "current": "21 A"}],
                           "one-way-length": "1 m", "section": "2.5 mm2"}}
                        """);
        assertThat(tight.fuse().between()).isEmpty();
        assertThat(tight.fuse().advice()).isEmpty();
        assertThat(tight.fuse().text())
                .startsWith("None fits: the series blade has no rating from 26.25 A to 29 A.");
    }

    /** 3 A times 1.25 to 21 A: 4, 5, 7.5, 10, 15 and 20 A fit. */
    @ParameterizedTest
    @CsvSource({
        "'', 'Take 4 A, the smallest of them'",
        "25 A, 'Take 4 A, the smallest of them'",
        "4 A, 'Yours, 4 A, is the smallest of them'",
        "10 A, 'Yours, 10 A, fits and protects this cable. 4 A, the smallest that fits, would open'",
    })
    void ofSeveralRatingsThatFitItSaysWhichToTake(final String fuse, final String said) {
        final CheckedCircuit lamps =
                Checked.circuit(
                        """
                        {"name": "Lamps", "given": {"loads": [{"name": "l", "current": "3 A"}],
                           "one-way-length": "2 m", "section": "1.5 mm2", "fuse": "%s"}}
                        """
                                .formatted(fuse));
        assertThat(lamps.fuse().between()).hasSizeGreaterThan(1);
        assertThat(lamps.fuse().advice().orElseThrow())
                .startsWith(said)
                .contains("common practice, no source");
    }

    /** 5 A times 1.25 to 29 A, to 16.5 A and less. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2.5 mm2 | Of its ratings 7.5, 10, 15, 20 and 25 A fit here.",
                "1 mm2 | Of its ratings 7.5, 10 and 15 A fit here.",
                "'' | choose one of 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40 A",
            })
    void insteadOfAFuseThatIsNotMadeThoseThatFitAreSaidFirst(
            final String section, final String said) {
        final CheckedCircuit pump =
                Checked.circuit(
                        """
                        {"name": "Pump", "given": {"loads": [{"name": "p", "current": "5 A"}],
                           "one-way-length": "1 m", "section": "%s", "fuse": "50 A"}}
                        """
                                .formatted(section));
        assertThat(pump.notesAt("given.fuse"))
                .extracting(FieldNote::text)
                .singleElement()
                .asString()
                .startsWith("The series blade has no fuse of 50 A")
                .contains(said);
    }

    @Test
    void whereNoRatingFitsNoneIsOfferedForAFuseThatIsNotMade() {
        final CheckedCircuit winch =
                Checked.circuit(
                        """
                        {"name": "Winch", "given": {"loads": [{"name": "w", "current": "21 A"}],
                           "one-way-length": "1 m", "section": "2.5 mm2", "fuse": "50 A"}}
                        """);
        assertThat(winch.notesAt("given.fuse"))
                .extracting(FieldNote::text)
                .anyMatch(text -> text.contains("none of its ratings"));
    }

    @Test
    void aLimitMetOnlyByColdCopperIsACaution() {
        final CheckedCircuit cold =
                Checked.circuit(
                        """
                        {"name": "Lamps", "given": {"loads": [{"name": "l", "current": "3 A"}],
                           "one-way-length": "5 m", "section": "1.5 mm2", "fuse": "5 A"}}
                        """);
        assertThat(cold.value(DROP)).hasValueCloseTo(0.344, CLOSE);
        assertThat(cold.ways()).isNotEmpty();
        assertThat(cold.cautions().get(0).danger()).isEqualTo(Danger.ONLY_JUST);
        assertThat(Checked.ids(cold.cautions())).containsExactly("limit-met-only-cold");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    "section": "2 V"              | given.section               | FUSE_CEILING
                    "one-way-length": "far"       | given.one-way-length        | DROP
                    "ambient-temperature": "warm" | given.ambient-temperature   | AMPACITY
                    "cable-table": "string"       | given.cable-table           | AMPACITY
                    "drop-limit": "little"        | given.drop-limit            | SECTION_FOR_DROP
                    "loads": [{"power": "x W"}]   | given.loads[0].power        | CIRCUIT_CURRENT
                    "loads": [{"name": "lamp"}]   | given.loads[0].power        | CIRCUIT_CURRENT
                    "loads": [{"power": "5 W", "hours-a-day": "30 h"}] | given.loads[0].hours-a-day | FUSE
                    """)
    void whatCannotBeReadIsSaidAtItsFieldAndNothingIsWorkedAroundIt(
            final String entry, final String where, final Quantity unknown) {
        final String circuit =
                """
                {"name": "Lamps", "given": {"loads": [{"name": "l", "power": "24 W"}],
                   "one-way-length": "5 m", "section": "1.5 mm2"}}
                """;
        final String key = entry.substring(0, entry.indexOf(':'));
        final CheckedCircuit broken =
                Checked.circuit(
                        circuit.replaceAll(key + ": (\\[.*?\\]|\"[^\"]*\")(, ?)?", "")
                                .replace("\"given\": {", "\"given\": {" + entry + ",")
                                .replaceAll(",\\s*}", "}"));
        assertThat(broken.notesAt(where)).isNotEmpty();
        assertThat(broken.value(unknown)).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void withoutALoadAndACableTheFieldsSayWhatIsMissing() {
        final CheckedCircuit empty = Checked.circuit("{\"name\": \"Spare\"}");
        assertThat(empty.notes())
                .filteredOn(note -> note.kind() == FieldNote.Kind.MISSING)
                .extracting(FieldNote::where)
                .contains("given.loads", "given.one-way-length", "given.section");
        assertThat(empty.fuse().known()).isFalse();
    }

    @Test
    void figuresThatContradictEachOtherAreSaidAtTheField() {
        final CheckedCircuit both =
                Checked.circuit(
                        """
                        {"name": "Lamps", "given": {"loads": [{"name": "l", "power": "24 W"}],
                           "section": "1.5 mm2", "one-way-length": "5 m", "return": "chassis",
                           "cable-table": "boat-cable"}}
                        """);
        assertThat(both.notesAt("given.return")).hasSize(1);
        assertThat(both.found()).isEmpty();
    }

    @Test
    void aRatingTheSeriesDoesNotHaveIsSaidAtItsField() {
        final CheckedCircuit lamps = Checked.circuit(LAMPS.replace("\"5 A\"", "\"6 A\""));
        assertThat(lamps.notesAt("given.fuse").get(0).text())
                .startsWith(
                        "The series blade has no fuse of 6 A. Of its ratings 5, 7.5, 10, 15 and 20 A fit");
    }

    @Test
    void twoLoadsOfOneNameAreBothCounted() {
        final CheckedCircuit twins =
                Checked.circuit(
                        """
                        {"name": "Lamps", "given": {"loads": [{"name": "l", "current": "1 A"},
                           {"name": "l", "current": "2 A"}, {"current": "3 A"}]}}
                        """);
        assertThat(twins.value(CIRCUIT_CURRENT)).hasValueCloseTo(6.0, CLOSE);
        assertThat(twins.notesAt("given.loads[1].name")).hasSize(1);
        assertThat(twins.loads())
                .extracting(CheckedLoad::name)
                .containsExactly("l", "l (2)", "load 3");
    }

    /** 2 A over 5 m: 0.688 V in 0.5 mm2 is more than 3 %; 20 m of it lose more than a tenth. */
    @ParameterizedTest
    @CsvSource({
        "5 m, OVER_LIMIT",
        "8.7 m, OVER_LIMIT",
        "8.8 m, WILL_NOT_WORK",
        "20 m, WILL_NOT_WORK"
    })
    void losingMoreThanTheLimitIsNotYetAFailure(final String length, final Danger danger) {
        final CheckedCircuit lamps =
                Checked.circuit(
                        """
                        {"name": "Lamps", "given": {"loads": [{"name": "l", "current": "2 A"}],
                          "one-way-length": "%s", "section": "0.5 mm2"}}
                        """
                                .formatted(length));
        assertThat(lamps.cautions())
                .filteredOn(it -> it.id().equals("drop-over-limit"))
                .extracting(Caution::danger)
                .containsExactly(danger);
    }

    /** 10 mm2 is past the end of the usual table; boat-cable has 80 A for it, iso-10133 65 A. */
    @ParameterizedTest
    @CsvSource({"66 A, true", "80 A, true", "65 A, false", "50 A, false"})
    void whereItsTableEndsTheOthersAreToldAndTheLowestHolds(final String fuse, final boolean fire) {
        final CheckedCircuit winch =
                Checked.circuit(
                        """
                        {"name": "Winch", "given": {"loads": [{"name": "l", "current": "40 A"}],
                          "one-way-length": "3 m", "section": "10 mm2", "fuse": "%s"}}
                        """
                                .formatted(fuse));
        assertThat(winch.notes())
                .extracting(FieldNote::text)
                .anyMatch(text -> text.contains("80 A (boat-cable), 65 A (iso-10133)"));
        assertThat(winch.cautions().stream().anyMatch(it -> it.danger() == Danger.FIRE))
                .isEqualTo(fire);
    }
}
