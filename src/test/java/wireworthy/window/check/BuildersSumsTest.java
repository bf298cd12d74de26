package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.rules.Quantity.*;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.VehicleWriter;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.sheet.SheetRead;
import wireworthy.vehicle.sheet.SheetReader;
import wireworthy.working.Danger;

/**
 * What a builder brings: a page of sums for five circuits with three mistakes, a spreadsheet of
 * twelve circuits with four. All are found, said why, and nothing else is.
 */
class BuildersSumsTest {
    @TempDir private Path folder;
    private VehicleModel model;

    @BeforeEach
    void begin() {
        model = Models.in(folder);
        EntryList.supply(model).given(List.of(SUPPLY_VOLTAGE)).get(0).type("12 V");
    }

    @AfterEach
    void close() {
        model.close();
    }

    private CheckedVehicle checked() {
        return model.checking().done().get().orElseThrow();
    }

    /** The circuit, its load, length, section and fuse as on the page. */
    private int circuit(
            final String name,
            final LoadEntry draw,
            final String load,
            final String length,
            final String section,
            final String fuse) {
        model.addCircuit();
        final int index = model.now().circuits().size() - 1;
        EntryList.name(model, index).type(name);
        EntryList.ofLoad(model, index, 0, draw).type(load);
        given(index, ONE_WAY_LENGTH, length);
        given(index, SECTION, section);
        given(index, FUSE, fuse);
        return index;
    }

    private void given(final int circuit, final Quantity quantity, final String text) {
        EntryList.circuit(model, circuit).given(List.of(quantity)).get(0).type(text);
    }

    private void own(final int circuit, final Quantity quantity, final String text) {
        EntryList.circuit(model, circuit).own(quantity).type(text);
    }

    @Test
    void aRightFigureForTheCableBeforeIsAFigureToLookAtUntilItIsUndoneOrAnotherVehicleIsOpen()
            throws IOException {
        final int lamps = circuit("Lamps", LoadEntry.POWER, "24 W", "5 m", "1.5 mm2", "5 A");
        own(lamps, DROP, "0.23 V");
        given(lamps, SECTION, "4 mm2");
        assertThat(states()).containsExactly(State.DIFFERS);
        assertThat(why(0)).startsWith("0.23 V still goes with the earlier section, 1.5 mm²");
        model.undo();
        assertThat(Differing.of(checked()).all()).isEmpty();

        given(lamps, SECTION, "4 mm2");
        final Path file = folder.resolve("again.json");
        Files.writeString(file, VehicleWriter.text(model.now()));
        model.open(file);
        assertThat(why(0)).doesNotContain("still goes with");
    }

    @Test
    void threeMistakesOnAPageOfSumsForFiveCircuits() {
        final int lamps = circuit("Lamps", LoadEntry.POWER, "24 W", "7.5 m", "2.5 mm2", "5 A");
        own(lamps, CIRCUIT_CURRENT, "2 A");
        own(lamps, DROP, "0.10 V");
        final int pump = circuit("Pump", LoadEntry.POWER, "54 W", "3 m", "2.5 mm2", "7.5 A");
        own(pump, CIRCUIT_CURRENT, "4.5 A");
        own(pump, FUSE_FLOOR, "5.6 A");
        circuit("Fridge", LoadEntry.POWER, "48 W", "2 m", "1 mm2", "25 A");
        final int inverter = circuit("Inverter", LoadEntry.POWER, "300 W", "1 m", "16 mm2", "40 A");
        EntryList.ofLoad(model, inverter, 0, LoadEntry.EFFICIENCY).type("85 %");
        own(inverter, CIRCUIT_CURRENT, "21.3 A");
        own(inverter, FUSE_FLOOR, "26.6 A");
        own(inverter, DROP, "0.0458 V");
        own(inverter, DROP_PERCENT, "0.382 %");
        final int radio = circuit("Radio", LoadEntry.CURRENT, "0.9 A", "3 m", "1.5 mm2", "2 A");
        own(radio, DROP, "0.062 V");

        assertThat(states())
                .containsExactly(
                        State.DIFFERS, State.SOUND, State.FIRE, State.DIFFERS, State.SOUND);
        assertThat(Differing.of(checked()).all())
                .extracting(Differing.One::name)
                .containsExactly("Lamps: your drop", "Inverter: your circuit current");
        assertThat(why(0)).contains("counted one way");
        assertThat(why(1)).contains("efficiency");
        assertThat(checked().cautions())
                .filteredOn(each -> each.caution().danger() == Danger.FIRE)
                .singleElement()
                .satisfies(each -> assertThat(each.name()).isEqualTo("Fridge"));
    }

    /** 2.33 A over 6.5 m: 0.348 V in cold copper of 0.36 V, 0.467 V in warm. */
    @Test
    void whatWarmCableAloneTakesHidesNoMistake() {
        final int lamps = circuit("Lamps", LoadEntry.POWER, "28 W", "6.5 m", "1.5 mm2", "5 A");
        assertThat(states()).containsExactly(State.ONLY_JUST);
        own(lamps, DROP, "0.174 V");
        assertThat(states()).containsExactly(State.DIFFERS);
        given(lamps, FUSE, "30 A");
        assertThat(states()).containsExactly(State.FIRE);
    }

    /** Without hours a day everything runs day and night; without a battery nothing lasts. */
    @Test
    void aSupplyIsSoundOnlyOnceItsBatteryAndTheHoursOfAllLoadsAreKnown() {
        final int lamps = circuit("Lamps", LoadEntry.POWER, "24 W", "2 m", "1.5 mm2", "5 A");
        EntryList.ofLoad(model, lamps, 0, LoadEntry.HOURS_A_DAY).type("4 h");
        assertThat(supply()).isEqualTo(State.INCOMPLETE);
        EntryList.supply(model).given(List.of(BATTERY_CAPACITY)).get(0).type("100 Ah");
        assertThat(supply()).isEqualTo(State.SOUND);
        EntryList.ofLoad(model, lamps, 0, LoadEntry.HOURS_A_DAY).type("");
        assertThat(supply()).isEqualTo(State.INCOMPLETE);
        assertThat(Unsettled.of(checked()).all())
                .noneMatch(each -> each.text().contains("Hours a day"));
    }

    private State supply() {
        return model.checking().state(Spot.Fixed.SUPPLY).orElseThrow();
    }

    private List<State> states() {
        return IntStream.range(0, model.now().circuits().size())
                .mapToObj(i -> model.checking().state(new Spot.OfCircuit(i)).orElseThrow())
                .toList();
    }

    private String why(final int number) {
        return Differing.of(checked()).all().get(number).text();
    }

    @Test
    void fourMistakesInASpreadsheetOfTwelveCircuits() throws Exception {
        final Path file =
                Path.of(
                        Objects.requireNonNull(
                                        BuildersSumsTest.class.getResource(
                                                "/wireworthy/sheets/twelve-circuits.csv"))
                                .toURI());
        final SheetRead read = SheetReader.read(file);
        new ImportModel(model, ((SheetRead.Whole) read).sheet()).takeIn();
        assertThat(model.now().circuits()).hasSize(12);
        assertThat(Differing.of(checked()).all())
                .extracting(Differing.One::name)
                .containsExactly("5", "6", "9: your drop");
        assertThat(why(0)).contains("If milliamps are meant, write \"350 mA\"");
        assertThat(why(1)).contains("write \"14 AWG\"");
        assertThat(why(2)).contains("counted one way");
        assertThat(checked().cautions())
                .filteredOn(each -> each.caution().danger() == Danger.FIRE)
                .singleElement()
                .satisfies(each -> assertThat(each.caution().text()).contains("25 A is above"));
        assertThat(checked().cautions())
                .filteredOn(each -> each.caution().id().equals("fuse-below-floor"))
                .isEmpty();
    }

    /** With a number in front of each row, and two columns of what the builder made of it. */
    private static final String NUMBERED =
            """
            No.;Circuit;Power (W);Qty;Length one way (m);Cable (mm²);Fuse (A);%s;Drop, mine (V);Remark
            1;Ceiling lights;3,5;8;6,5;1,5;5;2,33;0,348;
            2;LED strip;24;1;4;1,5;5;0,5;0,18;kitchen
            3;Water pump;65;1;3,2;2,5;10;5,42;0,119;
            4;Fridge;48;1;5;4;10;4,0;0,172;
            5;Diesel heater;110;1;2,5;4;7,5;9,17;0,197;
            6;Roof fan;36;1;4,5;2,5;5;3,0;0,186;
            7;USB sockets;45;2;3;2,5;15;7,5;0,310;
            8;Inverter;600;1;1,5;10;100;50,0;0,258;
            9;Radio;25;1;2;1,5;5;2,08;0,0955;
            10;Step light;2;2;3;0,75;2;0,333;0,0459;
            11;Tank sensor;1,2;1;4;0,75;2;0,1;0,0183;
            12;Reversing camera;6;1;7;1;2;0,5;0,12;
            Total;;;;;;;84,4;;
            """;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Current, mine (A)",
                "Current (A)",
                "my current (A)",
                "Strom, berechnet (A)"
            })
    void fourMistakesInANumberedSpreadsheetWithOwnCurrents(final String current) {
        final byte[] file = NUMBERED.formatted(current).getBytes(StandardCharsets.UTF_8);
        final ImportModel read =
                new ImportModel(model, ((SheetRead.Whole) SheetReader.read(file)).sheet());
        assertThat(CircuitLine.of(read.result().get().circuits().get(0)))
                .isEqualTo(
                        "Ceiling lights: 8 × 3.5 W, fuse 5 A, 6.5 m, 1.5 mm²,"
                                + " yours: circuit current 2.33 A, yours: drop 0.348 V");
        read.takeIn();
        assertThat(Unsettled.of(checked()).all())
                .extracting(Differing.One::name)
                .containsOnly("Main fuse and cable", "Inverter");
        given(7, CABLE_TABLE, "iso-10133");
        assertThat(checked().cautions())
                .filteredOn(each -> each.caution().danger() == Danger.FIRE)
                .extracting(each -> each.name())
                .containsExactly("Inverter");
        assertThat(checked().cautions())
                .filteredOn(each -> each.caution().id().equals("fuse-below-floor"))
                .extracting(each -> each.name())
                .containsExactly("Diesel heater");
        assertThat(Differing.of(checked()).all())
                .extracting(Differing.One::name)
                .containsExactly("LED strip: your circuit current", "Water pump: your drop");
        assertThat(why(0)).contains("volts are divided by the watts");
        assertThat(why(1)).contains("counted one way");
    }
}
