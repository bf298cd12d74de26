package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wireworthy.rules.Quantity.*;

import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.marking.Mark;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.Vehicle;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/** What all circuits come to together. */
class WholeTest {
    private static Purchases toBuy(final String fuse) {
        return Purchases.of(
                Checked.check(
                        Checked.vehicle(
                                """
                                {"name": "Stereo", "given": {"loads": [{"power": "48 W"}],
                                 "one-way-length": "3 m", "section": "1.5 mm2", "fuse": "%s"}}
                                """
                                        .formatted(fuse))));
    }

    /** 48 W on 12 V: 4 A, a floor of 5 A; 40 A could set this cable on fire. */
    @ParameterizedTest
    @CsvSource({"40 A, 'Stereo: 5 A, not 40 A'", "3 A, 'Stereo: 5 A, not 3 A'"})
    void aFuseThatDoesNotFitIsNeverBought(final String fuse, final String said) {
        final Purchases purchases = toBuy(fuse);
        assertThat(purchases.fuses())
                .extracting(Purchases.Item::kind)
                .singleElement()
                .asString()
                .endsWith("5 A")
                .doesNotContain(fuse);
        assertThat(purchases.unfit()).singleElement().asString().startsWith(said);
    }

    @Test
    void aFuseThatFitsIsBoughtAsChosen() {
        assertThat(toBuy("10 A").fuses().get(0).kind()).endsWith("10 A");
        assertThat(toBuy("10 A").unfit()).isEmpty();
    }

    private static final Offset<Double> CLOSE = within(1e-6);
    private static final String SUPPLY =
            """
            {"given": {"battery-voltage": "6.4 V", "in-series": "2", "battery-capacity": "100 Ah",
               "usable-share": "80 %", "internal-resistance": "5 mohm", "charge-current": "20 A",
               "charge-efficiency": "90 %"},
             "answers": {"bank-voltage": "12.8 V", "bank-energy": "2560 Wh"}}
            """;
    private static final String MAIN =
            """
            {"given": {"main-fuse": "60 A", "fuse-series": "maxi-blade", "one-way-length": "1 m",
               "section": "16 mm2", "cable-table": "iso-10133"},
             "answers": {"fuse-floor": "25 A"}}
            """;
    private static final String LAMPS =
            """
            {"name": "Lamps", "given": {"loads": [{"name": "l", "power": "64 W", "hours-a-day": "3 h"}],
               "one-way-length": "3 m", "section": "4 mm2", "fuse": "10 A"}}
            """;
    private static final String KETTLE =
            """
            {"name": "%s", "never-with": "hot", "given": {"loads": [{"name": "k", "current": "%s A",
               "share-of-time": "10 %%"}], "one-way-length": "1 m", "section": "6 mm2"}}
            """;

    private static CheckedVehicle van() {
        return Checked.check(
                Checked.read(
                        SUPPLY,
                        MAIN,
                        LAMPS,
                        KETTLE.formatted("Kettle", 12),
                        KETTLE.formatted("Pan", 15)));
    }

    @Test
    void circuitsThatNeverRunTogetherCountOnce() {
        assertThat(van().totalCurrent()).hasValueCloseTo(5 + 12 + 15.0, CLOSE);
        assertThat(van().simultaneousCurrent()).hasValueCloseTo(5 + 15.0, CLOSE);
        assertThat(van().mainFuse().floor()).hasValueCloseTo(25.0, CLOSE);
    }

    @Test
    void theMainCableHasItsDropAndItsCeiling() {
        assertThat(van().main().value(DROP)).hasValueCloseTo(20 * 0.0172 * 2 / 16, CLOSE);
        assertThat(van().mainFuse().ceiling()).hasValue(90);
        assertThat(van().mainFuse().chosen()).hasValue(60);
        assertThat(van().main().marks()).singleElement().matches(mark -> mark.isSound());
    }

    @Test
    void aMainFuseIsSoughtInTheFirstSeriesThatReaches() {
        final CheckedVehicle open =
                Checked.check(Checked.read(SUPPLY, "{}", KETTLE.formatted("Kettle", 90)));
        assertThat(open.mainFuse().series().id()).isEqualTo("strip-30");
        assertThat(open.main().cautions())
                .noneMatch(caution -> caution.id().equals("no-rating-fits"));
    }

    @Test
    void aDayTakesWhatEachLoadTakesInItsHours() {
        final double watts = 12.8;
        final double day = 64 * 3 + 24 * watts * 0.1 * (12 + 15);
        final CheckedPart supply = van().supply();
        assertThat(supply.value(DAILY_ENERGY).orElseThrow() / 3600).isCloseTo(day, CLOSE);
        assertThat(supply.value(RUNTIME).orElseThrow() / 3600)
                .isCloseTo(0.8 * 1280 / day * 24, within(1e-3));
        assertThat(supply.value(CHARGE_TIME).orElseThrow() / 3600)
                .isCloseTo(100 * 0.8 / (20 * 0.9), CLOSE);
    }

    @Test
    void figuresOfTheBankAreMarked() {
        assertThat(van().supply().marks())
                .extracting(mark -> mark.isSound())
                .containsExactly(true, false);
    }

    @Test
    void everyFuseIsHeldAgainstTheShortCircuitBehindIt() {
        final double atBattery = 12.8 / 0.005;
        final double atBoard = 12.8 / (0.005 + 0.0172 * 2 / 16);
        assertThat(van().faults())
                .extracting(fault -> fault.current().orElseThrow())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : 1)
                .containsExactly(atBattery, atBoard, atBoard, atBoard);
        assertThat(van().cautions())
                .filteredOn(each -> each.caution().id().equals("breaking-capacity-low"))
                .extracting(CheckedVehicle.Placed::circuit)
                .containsExactly(CheckedVehicle.WHOLE, 0, 1, 2);
    }

    @Test
    void whereNoFuseIsYetWhatItsSeriesCanBreakIsNotSaidOfIt() {
        final String empty = "{\"name\": \"New\", \"given\": {}}";
        final CheckedVehicle van = Checked.check(Checked.read(SUPPLY, MAIN, LAMPS, empty));
        assertThat(van.faults().get(1).text()).contains("behind this fuse", "it can break 1000 A");
        assertThat(van.faults().get(2).text())
                .contains("one of the series blade can break 1000 A")
                .doesNotContain("this fuse");
        assertThat(van.circuits().get(1).cautions())
                .extracting(Caution::text)
                .singleElement()
                .asString()
                .contains("such a fuse can break");
    }

    @Test
    void howFastACableHeatsIsAnOrderOfMagnitudeAndNoVerdict() {
        final FuseFault lamps = van().faults().get(1);
        final double current = lamps.current().orElseThrow();
        final double k = 226 * Math.sqrt(Math.log(1 + (160 - 105) / (234.5 + 105)));
        assertThat(lamps.heatingTime()).hasValueCloseTo(Math.pow(k * 4 / current, 2), within(1e-6));
        assertThat(lamps.text())
                .containsOnlyOnce("order of")
                .contains("order of 0.01 s")
                .doesNotContainIgnoringCase("surviv");
    }

    @Test
    void withoutTheInnerResistanceNothingIsSaidOfShortCircuits() {
        final String supply = SUPPLY.replace("\"internal-resistance\": \"5 mohm\", ", "");
        final CheckedVehicle open = Checked.check(Checked.read(supply, MAIN, LAMPS));
        assertThat(open.faults()).allMatch(fault -> fault.current().isEmpty());
        assertThat(open.supply().notes())
                .extracting(FieldNote::where)
                .contains("given.internal-resistance");
    }

    @Test
    void anUnknownCircuitLeavesTheSumsOpen() {
        final CheckedVehicle open =
                Checked.check(Checked.read(SUPPLY, MAIN, LAMPS, "{\"name\": \"Spare\"}"));
        assertThat(open.totalCurrent()).isEmpty();
        assertThat(open.supply().value(DAILY_ENERGY)).isEmpty();
        assertThat(open.supply().notes())
                .extracting(FieldNote::text)
                .anyMatch(t -> t.contains("Spare"));
    }

    @Test
    void loadsWithoutHoursAreCountedAllDayAndThatIsSaid() {
        final CheckedVehicle van =
                Checked.check(
                        Checked.read(
                                SUPPLY, MAIN, LAMPS.replace(", \"hours-a-day\": \"3 h\"", "")));
        assertThat(van.supply().assumed())
                .extracting(assumed -> assumed.text())
                .contains("on all day long: Lamps: l");
        assertThat(van.supply().ofEnergy())
                .singleElement()
                .asString()
                .startsWith("Hours a day are missing in: Lamps. What hangs there is taken as");
        assertThat(van().supply().ofEnergy()).isEmpty();
    }

    /** 64 W day and night; an own 192 Wh goes by hours that are not put in. */
    @Test
    void anEnergyWithoutHoursSaysSoAndMarksNoFigureAsASlip() {
        final String open =
                LAMPS.replace(", \"hours-a-day\": \"3 h\"", "")
                        .replace("}}\n", "}, \"answers\": {\"daily-energy\": \"192 Wh\"}}\n");
        final String supply =
                SUPPLY.replace(
                        "\"bank-voltage\"", "\"capacity-needed\": \"19 Ah\", \"bank-voltage\"");
        final CheckedVehicle van = Checked.check(Checked.read(supply, MAIN, open));
        final CheckedCircuit lamps = van.circuits().get(0);
        assertThat(lamps.found(DAILY_ENERGY).orElseThrow().text())
                .isEqualTo("1540 Wh (running day and night)");
        assertThat(lamps.working()).anyMatch(line -> line.note().startsWith("running day and"));
        assertThat(lamps.marks()).singleElement().matches(Mark::asksBack);
        assertThat(lamps.marks().get(0).explanation())
                .isEqualTo(
                        "192 Wh can't be checked before each load has its hours a day."
                                + " With day and night where they are missing, it is 1536 Wh.");
        assertThat(van.supply().marks())
                .filteredOn(mark -> mark.ref().quantity() == CAPACITY_NEEDED)
                .singleElement()
                .matches(Mark::asksBack);
    }

    @Test
    void ofManyCircuitsWithoutHoursOnlyTheirNumberIsSaid() {
        final String[] lamps =
                IntStream.range(0, 6)
                        .mapToObj(i -> LAMPS.replace("Lamps", "Lamps " + i))
                        .map(each -> each.replace(", \"hours-a-day\": \"3 h\"", ""))
                        .toArray(String[]::new);
        assertThat(Checked.check(Checked.read(SUPPLY, MAIN, lamps)).supply().ofEnergy())
                .singleElement()
                .asString()
                .startsWith("Hours a day are missing in 6 circuits.");
    }

    @Test
    void fireIsSaidFirst() {
        assertThat(Checked.check(Heron.vehicle()).cautions())
                .extracting(each -> each.caution().danger())
                .isSorted()
                .startsWith(Danger.FIRE)
                .contains(Danger.OVER_LIMIT);
    }

    @Test
    void theHeronIsWhollyWorkedAndHasItsCautions() {
        final CheckedVehicle heron = Checked.check(Heron.vehicle());
        assertThat(heron.circuits()).hasSize(9).allMatch(each -> each.notes().isEmpty());
        assertThat(heron.cautions())
                .extracting(each -> each.name() + ": " + each.caution().id())
                .contains(
                        "Popcorn-cart fan: thinner-cable-behind",
                        "House lamps: drop-over-limit",
                        "Aisle strips: limit-met-only-cold");
        assertThat(heron.circuits())
                .flatExtracting(CheckedCircuit::marks)
                .filteredOn(mark -> !mark.isSound())
                .hasSize(3);
    }

    @Test
    void anEmptyVehicleIsNoTrouble() {
        final CheckedVehicle empty = Checked.check(Vehicle.named("Van"));
        assertThat(empty.circuits()).isEmpty();
        assertThat(empty.totalCurrent()).isEmpty();
        assertThat(empty.cautions())
                .noneMatch(each -> each.caution().id().equals("no-rating-fits"));
    }

    @Test
    void aChangedFigureLeavesTheSumsOfTheOtherCircuitsAlone() {
        final VehicleChecker checker = new VehicleChecker();
        final Vehicle heron = Heron.vehicle();
        final CheckedVehicle before = checker.check(heron);
        final CheckedVehicle after =
                checker.check(
                        heron.withCircuit(
                                0, heron.circuits().get(0).withGiven(ONE_WAY_LENGTH, "6 m")));
        for (int i = 0; i < 9; i++) {
            assertThat(after.circuits().get(i).working() == before.circuits().get(i).working())
                    .as("circuit %d", i)
                    .isEqualTo(i != 0);
        }
    }

    /** The usual table ends at 8.5 mm2; 16 mm2 carries 120 A by one table, 90 A by another. */
    @ParameterizedTest
    @CsvSource({"80 A, false", "100 A, true", "500 A, true"})
    void aMainCableThatNoTableHereTellsOfIsNeverCalledSound(final String fuse, final boolean fire) {
        final String main =
                """
                {"given": {"main-fuse": "%s", "section": "16 mm2", "one-way-length": "1 m"}}
                """
                        .formatted(fuse);
        final CheckedPart checked = Checked.check(Checked.read(SUPPLY, main, LAMPS)).main();
        assertThat(checked.notes())
                .filteredOn(note -> note.where().equals("given.section"))
                .singleElement()
                .satisfies(note -> assertThat(note.kind()).isEqualTo(FieldNote.Kind.WRONG))
                .extracting(FieldNote::text)
                .asString()
                .contains("120 A (boat-cable), 90 A (iso-10133)");
        assertThat(Checked.ids(checked.cautions()).contains("fuse-above-other-table"))
                .isEqualTo(fire);
    }
}
