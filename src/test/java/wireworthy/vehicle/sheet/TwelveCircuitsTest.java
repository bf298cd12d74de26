package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.marking.Mark;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.VehicleChecker;
import wireworthy.working.Danger;

/**
 * A builder's spreadsheet of twelve circuits at 24 V: decimal commas, a unit in some cells, a gauge
 * in one, a total, and four errors.
 */
class TwelveCircuitsTest {
    private static final String SHEET =
            """
            Wiring of the cabin, 24 V system;;;;;;;;
            ;;;;;;;;
            No;What;Watts;A;Wire (one way);Wire;Fuse (A);Drop (V);Remarks
            1;Cabin lights;24;1,0;6;1,5;3;0,138;
            2;Reading lamps;12;0,5;8 m;1,5 mm²;3;0,092;
            3;Fridge;60;5,0;4,5;2,5;7,5;0,31;the amps of 12 V
            4;Water pump;96;4,0;5;4;7,5;0,086;out, not back
            5;Heater fan;36;1,5;12 ft;1,5;3;0,126;
            6;Winch;480;20;3;AWG 8;30;0,25;
            7;Autopilot;120;5;700 cm;2,5;50;0,48;far too large a fuse
            8;Radio;;3;2,5;1;5;0,258;
            9;Stereo;144;6;4;2,5;10;3,3;a comma too far right
            10;Chart light;4,8;200 mA;3;0,75 qmm;1;0,0275;
            11;USB sockets;48;2;5;1,5;4;0,229;
            12;Bilge pump;0,096 kW;4;6;4;7,5;0,206;
            ;Total;1197;52;;;;;
            """;

    private final SheetImport taken = Sheets.taken(SHEET);
    private final List<CheckedCircuit> circuits =
            new VehicleChecker().check(taken.into(Vehicle.named("Boat"))).circuits();

    private CheckedCircuit circuit(final int number) {
        return circuits.get(number - 1);
    }

    @Test
    void everyRowIsAccountedFor() {
        assertThat(Sheets.kinds(taken))
                .startsWith(RowOutcome.Kind.BEFORE, RowOutcome.Kind.EMPTY, RowOutcome.Kind.HEADINGS)
                .endsWith(RowOutcome.Kind.LEFT_OUT);
        assertThat(Sheets.kinds(taken).subList(3, 15)).containsOnly(RowOutcome.Kind.TAKEN);
        assertThat(taken.troubles())
                .extracting(RowOutcome::reason)
                .containsExactly("it looks like a sum of the others");
    }

    @Test
    void everyColumnButTheNumbersIsTakenForSomething() {
        assertThat(taken.mapping().columns())
                .filteredOn(column -> column.target() == Target.Word.NOTHING)
                .extracting(Column::heading)
                .containsExactly("No");
        assertThat(taken.mapping().columns().get(3).target())
                .isEqualTo(new Target.Own(Quantity.CIRCUIT_CURRENT));
    }

    @Test
    void theRemarksAreKeptAsNotes() {
        assertThat(circuit(7).circuit().notes()).isEqualTo("far too large a fuse");
        assertThat(circuit(1).circuit().notes()).isEmpty();
    }

    @Test
    void theVoltageInTheTitleIsThatOfTheVehicle() {
        assertThat(taken.volts()).isEqualTo("24 V");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Cabin, 24 Volt; wired at 24V | 24 V",
                "Haus 12,8 V | 12.8 V",
                "24 V with an inverter to 230 V | 24 V",
                "12 V behind a converter from 24 V | ''",
                "230 V side | ''",
                "Version 3 | ''",
            })
    void aTitleIsAskedForTheVoltageOnlyWhereItNamesOne(final String title, final String volts) {
        final String sheet = title + ";;;;\n" + SHEET.substring(SHEET.indexOf('\n') + 1);
        assertThat(Sheets.taken(sheet).volts()).isEqualTo(volts);
    }

    @Test
    void whereNoPowerStandsTheCurrentIsWhatIsKnown() {
        assertThat(taken.circuits().get(7).loads())
                .extracting(load -> load.entries().text(LoadEntry.CURRENT))
                .containsExactly("3 A");
        assertThat(taken.circuits().get(7).part().answers().has(Quantity.CIRCUIT_CURRENT))
                .isFalse();
        assertThat(circuit(8).value(Quantity.CIRCUIT_CURRENT)).hasValue(3);
    }

    private static String errors(final CheckedCircuit circuit) {
        return circuit.marks().stream()
                .filter(mark -> !mark.isSound() && !mark.follows())
                .map(Mark::explanation)
                .collect(Collectors.joining(" "));
    }

    @Test
    void eachErrorIsFoundWithItsCause() {
        assertThat(errors(circuit(3))).contains("5.0 A").containsIgnoringCase("voltage");
        assertThat(errors(circuit(4))).contains("0.086 V", "one way");
        assertThat(circuit(7).cautions())
                .filteredOn(caution -> caution.danger() == Danger.FIRE)
                .singleElement()
                .satisfies(it -> assertThat(it.text()).contains("50 A", "29 A"));
        assertThat(errors(circuit(9))).contains("3.3 V", "decimal point");
    }

    @Test
    void whatIsRightIsNotDoubted() {
        final List<Integer> wrong = List.of(3, 4, 7, 9);
        IntStream.rangeClosed(1, circuits.size())
                .filter(number -> !wrong.contains(number))
                .mapToObj(this::circuit)
                .forEach(
                        each -> {
                            assertThat(errors(each)).as(each.circuit().name()).isEmpty();
                            assertThat(each.cautions()).as(each.circuit().name()).isEmpty();
                            assertThat(each.notes()).as(each.circuit().name()).isEmpty();
                        });
        assertThat(circuits).flatExtracting(each -> each.circuit().loads()).hasSize(12);
    }

    @Test
    void aGaugeAndUnitsOfCellsAreRead() {
        assertThat(circuit(6).circuit().part().given().text(Quantity.SECTION)).isEqualTo("AWG 8");
        assertThat(circuit(10).circuit().part().given().text(Quantity.SECTION))
                .isEqualTo("0,75 qmm");
        assertThat(taken.circuits().get(11).loads())
                .extracting(Load::name)
                .containsExactly("Bilge pump");
        assertThat(circuit(12).value(Quantity.CIRCUIT_CURRENT)).hasValue(4);
    }
}
