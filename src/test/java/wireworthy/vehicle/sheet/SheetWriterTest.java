package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Part;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.VehicleChecker;

class SheetWriterTest {
    @ParameterizedTest
    @ValueSource(chars = {',', ';', '\t'})
    void whatIsWrittenIsReadBack(final char separator) {
        final SheetImport taken = Sheets.taken(SheetWriter.text(Heron.vehicle(), separator));
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.circuits()).isEqualTo(Heron.vehicle().circuits());
    }

    @ParameterizedTest
    @ValueSource(chars = {',', ';'})
    void howCircuitsAreFedComesBack(final char separator) {
        final Vehicle van =
                withPlaces()
                        .plus(
                                Circuit.named("Tap")
                                        .fedFrom(new Feed("Lamps", true))
                                        .withNeverWith("heater")
                                        .plus(Load.named("a").with(LoadEntry.POWER, "5 W"))
                                        .plus(Load.named("b").with(LoadEntry.POWER, "6 W")))
                        .plus(
                                Circuit.named("Bare tap")
                                        .fedFrom(new Feed("Lamps", false))
                                        .plus(Load.named("c").with(LoadEntry.POWER, "7 W")));
        final SheetImport taken = Sheets.taken(SheetWriter.text(van, separator));
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.circuits()).isEqualTo(van.circuits());
    }

    @Test
    void notesOfAnyLengthComeBackOnce() {
        final Vehicle van =
                withPlaces()
                        .plus(
                                Circuit.named("Lockers")
                                        .withNotes("under the bench; " + "far ".repeat(200) + "=2")
                                        .plus(Load.named("a").with(LoadEntry.POWER, "5 W"))
                                        .plus(Load.named("b").with(LoadEntry.POWER, "6 W")));
        final SheetImport taken = Sheets.taken(SheetWriter.text(van, ','));
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.circuits()).isEqualTo(van.circuits());
    }

    @Test
    void theRemarksOfAllRowsOfACircuitAreKept() {
        final String rows =
                "Circuit,Load,Power,Remarks%nA,x,5,bow%nA,y,6,stern%n,z,7,bow%n".formatted();
        assertThat(Sheets.taken(rows).circuits())
                .singleElement()
                .extracting(Circuit::notes)
                .isEqualTo("bow; stern");
    }

    private static Vehicle fedAt(final String volts) {
        return withPlaces().withSupply(Part.EMPTY.withGiven(Quantity.SUPPLY_VOLTAGE, volts));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 V", "24 V", "25,6 V", "48 V"})
    void theVoltageTheyAreFedAtComesBackWithThem(final String volts) {
        final SheetImport taken = Sheets.taken(SheetWriter.text(fedAt(volts), ';'));
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.circuits()).isEqualTo(withPlaces().circuits());
        assertThat(VehicleChecker.volts(taken.into(Vehicle.named("New"))))
                .isEqualTo(volts.replace(',', '.'));
    }

    @Test
    void theVoltageOfABankComesBackToo() {
        final Vehicle bank =
                withPlaces()
                        .withSupply(
                                Part.EMPTY
                                        .withGiven(Quantity.BATTERY_VOLTAGE, "12.8 V")
                                        .withGiven(Quantity.IN_SERIES, "2"));
        assertThat(Sheets.taken(SheetWriter.text(bank, ',')).volts()).isEqualTo("25.6 V");
    }

    @Test
    void circuitsThatAreThereKeepTheVoltageTheyRunAt() {
        final SheetImport taken = Sheets.taken(SheetWriter.text(fedAt("24 V"), ','));
        final Vehicle other = fedAt("12 V");
        assertThat(taken.otherVolts(other)).contains("12 V");
        assertThat(VehicleChecker.volts(taken.into(other))).isEqualTo("12 V");
        assertThat(taken.otherVolts(fedAt("24.0 V"))).isEmpty();
    }

    @Test
    void anEmptyVehicleTakesTheVoltageOfTheFile() {
        final SheetImport taken = Sheets.taken(SheetWriter.text(fedAt("24 V"), ','));
        final Vehicle empty = fedAt("12 V").withCircuits(List.of());
        assertThat(taken.otherVolts(empty)).contains("12 V");
        assertThat(VehicleChecker.volts(taken.into(empty))).isEqualTo("24 V");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "System voltage",
                "supply voltage (V)",
                "Voltage",
                "Bordspannung",
                "System voltage in V"
            })
    void whatIsMadeForAnotherVoltageIsNotWorkedAtThisOne(final String heading) {
        final SheetImport taken =
                Sheets.taken(
                        "Circuit;Power;%s\nLamps;20 W;24\nFridge;60 W;12 V\nFan;10 W;24.0\n"
                                .formatted(heading));
        assertThat(taken.volts()).isEqualTo("24 V");
        assertThat(taken.circuits()).extracting(Circuit::name).containsExactly("Lamps", "Fan");
        assertThat(taken.troubles())
                .singleElement()
                .satisfies(
                        row -> {
                            assertThat(row.line()).isEqualTo(3);
                            assertThat(row.reason())
                                    .startsWith("it is made for 12 V, a row before for 24 V");
                        });
    }

    private static Stretch stretch(final String from, final String to) {
        return new Stretch(from, to, Entries.none());
    }

    /** A ring with a branch; one stretch is known by its resistance, one not at all yet. */
    private static Vehicle withPlaces() {
        final Circuit ring =
                Circuit.named("Lamps")
                        .withGiven(Quantity.FUSE, "5 A")
                        .withAnswer(Quantity.DROP, "0.2 V")
                        .plus(
                                Load.named("strip")
                                        .with(LoadEntry.POWER, "12 W")
                                        .connectedAt("galley"))
                        .plus(Load.named("spot").with(LoadEntry.CURRENT, "0.4 A").connectedAt("=B"))
                        .withStretches(
                                List.of(
                                        stretch("source", "galley")
                                                .with(Quantity.ONE_WAY_LENGTH, "3.5 m")
                                                .with(Quantity.SECTION, "2.5 mm2"),
                                        stretch("galley", "=B")
                                                .with(Quantity.LOOP_RESISTANCE, "40 mohm"),
                                        stretch("=B", "source")
                                                .with(Quantity.RESISTANCE_PER_LENGTH, "8 mohm/m")
                                                .with(Quantity.ONE_WAY_LENGTH, "2 m"),
                                        stretch("galley", "door")));
        return Vehicle.named("Van").plus(ring).plus(Heron.vehicle().circuits().get(0));
    }

    @ParameterizedTest
    @ValueSource(chars = {',', ';', '\t'})
    void aStretchOfCableHasARowOfItsOwn(final char separator) {
        final SheetImport taken = Sheets.taken(SheetWriter.text(withPlaces(), separator));
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.circuits()).isEqualTo(withPlaces().circuits());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lamps;;A;B;3 W;2 m; | a stretch of cable has no power of the load",
                "Lamps;;A;B;;2 m;5 A | a stretch of cable has no fuse",
            })
    void whatAStretchHasNoRoomForIsNotDroppedInSilence(final String row, final String why) {
        final SheetImport taken =
                Sheets.taken(
                        "Circuit;Load;Stretch from;Stretch to;Power;Length;Fuse\n"
                                + "Lamps;lamp;;;3 W;;5 A\n"
                                + row.strip()
                                + "\n");
        assertThat(taken.troubles()).extracting(RowOutcome::reason).containsExactly(why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(\"x\")", "+1+1", "-2+3", "@SUM(A1)"})
    void aCellASpreadsheetWouldWorkIsMadeText(final String formula) {
        final Vehicle van =
                Vehicle.named("Van")
                        .plus(Circuit.named(formula).withGiven(Quantity.SECTION, formula));
        final String text = SheetWriter.text(van, ',');
        assertThat(text.lines().skip(1).flatMap(line -> line.chars().mapToObj(c -> (char) c)))
                .first()
                .isIn('\'', '"');
        for (final String cell : text.replace("\"\"", "").split("[,\"\r\n]+")) {
            assertThat(cell).doesNotStartWith("=").doesNotStartWith("+").doesNotStartWith("@");
        }
        assertThat(Sheets.taken(text).circuits().get(0).name()).isEqualTo(formula);
    }

    /** A file that mixes points and commas would be read a thousand times too large. */
    @Test
    void commasAndPointsAreWrittenOneWay() {
        final String sums = "Circuit;Load power;my current;my drop\nLamps;20 W;1,67 A;0,175\n";
        final Vehicle typed =
                Vehicle.named("Van")
                        .plus(Sheets.taken(sums).circuits().get(0))
                        .plus(Circuit.named("Fan").withAnswer(Quantity.DROP, "1,25 V"));

        final String text = SheetWriter.text(typed, ',');

        assertThat(text).contains("1.67 A", "0.175 V", "1.25 V").doesNotContain("1,");
        assertThat(Sheets.taken(text).circuits().get(0).part().answers().text(Quantity.DROP))
                .isEqualTo("0.175 V");
    }

    @Test
    void aFormulaBehindBlanksIsMadeTextToo() {
        final String text =
                SheetWriter.text(Vehicle.named("Van").plus(Circuit.named("  =1+1")), ',');
        assertThat(text).contains("'  =1+1");
    }

    @Test
    void itBeginsWithTheMarkSpreadsheetsKnowUtf8By() {
        assertThat(SheetWriter.text(Vehicle.named("Van"), ',')).startsWith("\uFEFFCircuit,Load,");
    }
}
