package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.record.SumsInUse;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.sheet.RowOutcome;
import wireworthy.vehicle.sheet.Sheet;
import wireworthy.vehicle.sheet.SheetRead;
import wireworthy.vehicle.sheet.SheetReader;
import wireworthy.vehicle.sheet.Target;
import wireworthy.window.Background;

/** A spreadsheet on its way into a vehicle. */
class ImportModelTest {
    private static final String SHEET =
            """
            Circuit;Watts;Run (m);Cable;Fuse;Guess
            Bunk lamps;12 W;4,5;1,5 mm2;5 A;1,0
            Winch;lots;2;25 mm2;100 A;
            ;;;;;

            Total;12;;;;
            """;

    @TempDir private Path folder;
    private VehicleModel vehicle;
    private ImportModel model;

    @BeforeEach
    void read() {
        vehicle = new VehicleModel(new Shelf(folder), () -> SumsInUse.USUAL, Background.atOnce());
        final SheetRead read = SheetReader.read(SHEET.getBytes(StandardCharsets.UTF_8));
        model = new ImportModel(vehicle, ((SheetRead.Whole) read).sheet());
    }

    @Test
    void columnsAreGuessedAndShownWithAnExample() {
        assertThat(model.columns().get(2).text())
                .isEqualTo("one-way length, in m as the heading says");
        assertThat(model.example(model.columns().get(2))).isEqualTo("4,5");
    }

    @Test
    void everyRowIsAccountedForAndNothingIsTakenYet() {
        assertThat(model.result().get().rows())
                .extracting(RowOutcome::kind)
                .containsExactly(
                        RowOutcome.Kind.HEADINGS,
                        RowOutcome.Kind.TAKEN,
                        RowOutcome.Kind.IN_PART,
                        RowOutcome.Kind.EMPTY,
                        RowOutcome.Kind.EMPTY,
                        RowOutcome.Kind.LEFT_OUT);
        assertThat(model.summary())
                .isEqualTo(
                        "2 circuits from 6 rows: 1 taken, 1 taken with something that can't be"
                                + " read, 1 left out, 3 empty, headings or above them.");
        assertThat(vehicle.now().circuits()).isEmpty();
    }

    /** A table the file names stays; where it names none that in use is taken, as for a new one. */
    @Test
    void whatIsTakenInGoesByTheSumsInUse() {
        final SumsInUse boat = SumsInUse.USUAL.withCableTable("iso-10133").withDropLimit(0.05);
        vehicle = new VehicleModel(new Shelf(folder), () -> boat, Background.atOnce());
        final String text =
                "Circuit;Watts;Section;Cable table\nLamps;20 W;2.5 mm2;\nPump;40 W;4 mm2;thin-wall\n";
        final SheetRead read = SheetReader.read(text.getBytes(StandardCharsets.UTF_8));
        new ImportModel(vehicle, ((SheetRead.Whole) read).sheet()).takeIn();
        assertThat(vehicle.now().circuits())
                .extracting(it -> it.part().given().text(Quantity.CABLE_TABLE))
                .containsExactly("iso-10133", "thin-wall");
        assertThat(vehicle.now().circuits())
                .extracting(it -> it.part().given().text(Quantity.DROP_LIMIT))
                .containsExactly("5 %", "5 %");
    }

    private ImportModel at24Volts() {
        final String text = "Circuit;Watts;System voltage\nLamps;20 W;24 V\n";
        final SheetRead read = SheetReader.read(text.getBytes(StandardCharsets.UTF_8));
        return new ImportModel(vehicle, ((SheetRead.Whole) read).sheet());
    }

    private void fed(final String volts) {
        vehicle.change(
                "", it -> it.withSupply(it.supply().withGiven(Quantity.SUPPLY_VOLTAGE, volts)));
    }

    @Test
    void whichVoltageTheCircuitsAreWorkedAtIsSaid() {
        assertThat(at24Volts().volts()).startsWith("The spreadsheet is for a supply of 24 V");
        fed("12 V");
        assertThat(at24Volts().volts()).contains("was set to 12 V", "the vehicle is set to 24 V");
        vehicle.change("", it -> it.plus(Circuit.named("Winch")));
        assertThat(at24Volts().volts())
                .contains("fed at 12 V, the spreadsheet is for 24 V", "worked at 12 V");
        assertThat(model.volts()).isEmpty();
    }

    @Test
    void circuitsForAnotherVoltageAreNotAddedInSilence() {
        fed("12 V");
        vehicle.change("", it -> it.plus(Circuit.named("Winch")));
        at24Volts().takeIn();
        assertThat(vehicle.told().get()).contains("worked at 12 V");
        assertThat(vehicle.now().supply().given().text(Quantity.SUPPLY_VOLTAGE)).isEqualTo("12 V");
        at24Volts().takeAsNew();
        assertThat(vehicle.now().supply().given().text(Quantity.SUPPLY_VOLTAGE)).isEqualTo("24 V");
    }

    @Test
    void aColumnCanBeTakenForSomethingElse() {
        model.take(5, new Target.Own(Quantity.CIRCUIT_CURRENT));
        assertThat(model.result().get().circuits().get(0).part().answers().typed())
                .containsKey(Quantity.CIRCUIT_CURRENT);
    }

    @Test
    void whereNeitherHeadingNorCellNamesAUnitItCanBeChosen() {
        assertThat(model.columns().get(4).text())
                .isEqualTo("fuse, in A where the cell names no unit: is that so?");
        final Sheet sheet = read("Circuit;Current;Length;Duty\nPump;250;180;0,35\n");
        final ImportModel other = new ImportModel(vehicle, sheet);
        assertThat(other.columns().get(1).units()).containsExactly("A", "mA");
        other.takeUnit(1, "mA");
        other.takeUnit(2, "cm");
        assertThat(other.columns().get(1).text()).endsWith("in mA as you chose");
        final Circuit pump = other.result().get().circuits().get(0);
        assertThat(pump.loads().get(0).entries().text(LoadEntry.CURRENT)).isEqualTo("250 mA");
        assertThat(pump.part().given().text(Quantity.ONE_WAY_LENGTH)).isEqualTo("180 cm");
        assertThat(pump.loads().get(0).entries().text(LoadEntry.SHARE_OF_TIME)).isEqualTo("35 %");
        assertThat(other.columns().get(3).text()).contains("parts of 1");
    }

    private static Sheet read(final String text) {
        final SheetRead read = SheetReader.read(text.getBytes(StandardCharsets.UTF_8));
        return ((SheetRead.Whole) read).sheet();
    }

    @Test
    void whatIsTakenInCanBeUndoneAtOnce() {
        final Vehicle before = vehicle.now();
        model.takeIn();
        assertThat(vehicle.now().circuits())
                .extracting(Circuit::name)
                .containsExactly("Bunk lamps", "Winch");
        vehicle.undo();
        assertThat(vehicle.now()).isEqualTo(before);
    }

    @Test
    void intoAnEmptyVehicleNothingIsAsked() {
        assertThat(model.asks()).isFalse();
        assertThat(model.where())
                .isEqualTo(
                        "Nothing is taken in yet: the circuits go into \"My vehicle\", which is"
                                + " open, once you say so.");
        model.takeIn();
        assertThat(vehicle.told().get())
                .isEqualTo(
                        "Taken into \"My vehicle\": 2 circuits."
                                + " Undo (Ctrl+Z) takes them out again.");
        vehicle.undo();
        assertThat(vehicle.told().get()).isEqualTo("Undone: 2 circuits out again.");
    }

    @Test
    void whereAVehicleHasCircuitsItIsAskedIntoWhichTheyGo() {
        vehicle.addCircuit();
        assertThat(model.asks()).isTrue();
        assertThat(model.where())
                .startsWith("Nothing is taken in yet.")
                .contains("\"My vehicle\" is open and has 1 circuit already");
        final Vehicle before = vehicle.now();
        model.takeAsNew();
        assertThat(vehicle.now().name()).isEqualTo("My vehicle 2");
        assertThat(vehicle.now().circuits()).hasSize(2);
        assertThat(vehicle.told().get())
                .contains("\"My vehicle 2\"", "\"My vehicle\" is as it was");
        vehicle.open(folder.resolve("my-vehicle.json"));
        assertThat(vehicle.now()).isEqualTo(before);
    }

    @Test
    void whatMostColumnsAreAboutStandsFirst() {
        assertThat(ImportModel.targets().subList(0, 13))
                .contains(
                        Target.Word.CIRCUIT,
                        new Target.OfLoad(LoadEntry.POWER),
                        new Target.Given(Quantity.FUSE),
                        new Target.Own(Quantity.DROP));
    }

    @Test
    void oneIsNotCalledMany() {
        final Sheet one = read("Circuit;Power (W)\nPump;60\n");
        assertThat(new ImportModel(vehicle, one).summary()).startsWith("1 circuit from 2 rows: ");
    }

    @Test
    void aColumnMayBeTakenForAllThatCanBeSaidOfACircuit() {
        assertThat(ImportModel.targets())
                .contains(
                        Target.Word.NOTHING,
                        new Target.Given(Quantity.SECTION),
                        new Target.Own(Quantity.DROP))
                .doesNotHaveDuplicates();
        assertThat(model.columns()).extracting(it -> it.target()).isSubsetOf(ImportModel.targets());
    }
}
