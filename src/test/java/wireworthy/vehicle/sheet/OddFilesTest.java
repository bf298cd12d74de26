package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.rules.Quantity.*;
import static wireworthy.vehicle.sheet.RowOutcome.Kind.*;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vehicle;

/** Files written by hand, half broken or full of a spreadsheet's quirks. */
class OddFilesTest {
    @Test
    void titlesAndEmptyRowsAreAccountedFor() {
        final SheetImport taken =
                Sheets.taken(
                        """
                        My van,,,

                        Circuit,Power,Length,Fuse
                        ,,,
                        Pump,54 W,5 m,7.5 A
                        """);
        assertThat(Sheets.kinds(taken)).containsExactly(BEFORE, EMPTY, HEADINGS, EMPTY, TAKEN);
        assertThat(taken.rows()).extracting(RowOutcome::line).containsExactly(1, 2, 3, 4, 5);
    }

    @Test
    void rowsThatNameNoCircuitGoOnWithTheOneBefore() {
        final SheetImport taken =
                Sheets.taken(
                        """
                        Circuit;What;Qty;Power [W];Length [m]
                        Lamps;reading lamp;6;4;7,5
                        ;globe;2;7;
                        Lamps;strip;1;9,6;
                        Pump;pump;1;54;4
                        """);
        assertThat(taken.circuits()).extracting(Circuit::name).containsExactly("Lamps", "Pump");
        assertThat(taken.circuits().get(0).loads())
                .extracting(Load::name)
                .containsExactly("reading lamp", "globe", "strip");
        assertThat(taken.rows()).extracting(RowOutcome::circuit).containsExactly(-1, 0, 0, 0, 1);
    }

    @Test
    void aQuotationMarkThatIsNeverClosedCostsOneRow() {
        final StringBuilder text =
                new StringBuilder("Circuit,Power,Section\nPump,\"54 W,1.5 mm2\n");
        for (int i = 0; i < 50; i++) {
            text.append("lamp ").append(i).append(",5 W,1.5 mm2\n");
        }
        final SheetImport taken = Sheets.taken(text.toString());
        assertThat(taken.circuits()).hasSize(50);
        assertThat(taken.troubles())
                .singleElement()
                .satisfies(
                        row -> {
                            assertThat(row.line()).isEqualTo(2);
                            assertThat(row.kind()).isEqualTo(LEFT_OUT);
                            assertThat(row.reason()).contains("quotation mark");
                        });
    }

    @Test
    void lineBreaksInQuotesStayInTheirRow() {
        final SheetImport taken =
                Sheets.taken(
                        "Circuit,\"Power\n(W)\",Fuse\n\"House\nlamps\",24,5 A\nPump,54,7.5 A\n");
        assertThat(taken.circuits())
                .extracting(Circuit::name)
                .containsExactly("House lamps", "Pump");
        assertThat(taken.rows()).extracting(RowOutcome::line).containsExactly(1, 3, 5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    '="54"'   | 54 W      | TAKEN
                    "'54"     | 54 W      | TAKEN
                    0.054 kW  | 0.054 kW  | TAKEN
                    1,240     | 1240 W    | TAKEN
                    #N/A      | #N/A      | IN_PART
                    #DIV/0!   | #DIV/0!   | IN_PART
                    fifty     | fifty     | IN_PART
                    54 V      | 54 V      | IN_PART
                    -5        | -5 W      | IN_PART
                    """)
    void whatASpreadsheetMakesOfACell(
            final String cell, final String kept, final RowOutcome.Kind kind) {
        final SheetImport taken =
                Sheets.taken("Circuit;Power (W);Length (m)\nPump;" + cell + ";4.25\nFan;9;1.5\n");
        assertThat(taken.rows().get(1).kind()).isEqualTo(kind);
        assertThat(taken.rows().get(1).reason().isEmpty()).isEqualTo(kind == TAKEN);
        assertThat(taken.circuits().get(0).loads().get(0).entries().text(LoadEntry.POWER))
                .isEqualTo(kept);
    }

    @Test
    void whereNoOtherCellTellsACommaBeforeThreeDigitsIsAskedAbout() {
        final SheetImport taken = Sheets.taken("Circuit;Power (W);Fuse (A)\nKettle;1,200;10\n");
        assertThat(taken.rows().get(1).kind()).isEqualTo(IN_PART);
        assertThat(taken.rows().get(1).reason()).contains("could be 1.200 W or 1200 W");
    }

    @Test
    void whereOtherCellsHaveDecimalCommasAPointPartsThousands() {
        final SheetImport taken =
                Sheets.taken("Circuit;Power (W);Length (m)\nKettle;1.200;2,5\nFan;9,25;1,375\n");
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.rows().get(1).cells().get(1).understood()).isEqualTo("1200 W");
        assertThat(taken.rows().get(2).cells().get(2).understood()).isEqualTo("1.375 m");
    }

    @Test
    void unitsOfCellsOutrankTheHeading() {
        final SheetImport taken =
                Sheets.taken(
                        "Circuit,Load (W),Length (ft),Wire (AWG)\nPump,54,12,14\nFan,9,3 m,1.5 mm2\n");
        assertThat(taken.circuits().get(0).part().given().text(ONE_WAY_LENGTH)).isEqualTo("12 ft");
        assertThat(taken.circuits().get(0).part().given().text(SECTION)).isEqualTo("14 AWG");
        assertThat(taken.circuits().get(1).part().given().text(ONE_WAY_LENGTH)).isEqualTo("3 m");
        assertThat(taken.circuits().get(1).part().given().text(SECTION)).isEqualTo("1.5 mm2");
    }

    @Test
    void aUnitNobodyNamedIsTakenButSaid() {
        final Mapping mapping = Mapping.guess(Sheets.read("Circuit,Power,Length\nPump,54,5\n"));
        assertThat(mapping.columns().get(2).unitFrom()).isEqualTo(Column.UnitFrom.ASSUMED);
        assertThat(mapping.columns().get(2).text())
                .isEqualTo("one-way length, in m where the cell names no unit: is that so?");
    }

    @Test
    void theMappingCanBeChanged() {
        final Sheet sheet = Sheets.read("Circuit,Power,Cable run\nPump,54 W,5\nFan,9 W,2\n");
        final Mapping changed =
                Mapping.guess(sheet).with(2, new Target.Given(LOOP_LENGTH)).withUnit(2, "ft");
        final SheetImport taken = SheetImport.of(sheet, changed);
        assertThat(taken.circuits().get(0).part().given().text(LOOP_LENGTH)).isEqualTo("5 ft");
        assertThat(taken.circuits().get(0).part().given().has(ONE_WAY_LENGTH)).isFalse();
    }

    @Test
    void sumsAndRowsWithoutFiguresAreLeftOutWithTheirReason() {
        final SheetImport taken =
                Sheets.taken(
                        """
                        Circuit,Power (W),Fuse (A)
                        Sump pump,54,7.5
                        to do: heater,,
                        ,12,
                        TOTAL,66,
                        """);
        assertThat(Sheets.kinds(taken))
                .containsExactly(HEADINGS, TAKEN, LEFT_OUT, LEFT_OUT, LEFT_OUT);
        assertThat(taken.troubles())
                .extracting(RowOutcome::reason)
                .containsExactly(
                        "no figure of a circuit stands in it",
                        "it names no circuit",
                        "it looks like a sum of the others");
    }

    @Test
    void aRowThatContradictsItsCircuitIsLeftOut() {
        final SheetImport taken =
                Sheets.taken(
                        """
                        Circuit,Load,Power (W),Length (m)
                        Lamps,a,5,7
                        Lamps,b,5,8
                        """);
        assertThat(taken.troubles().get(0).reason())
                .isEqualTo("it gives \"Lamps\" another one-way length than a row before");
    }

    @Test
    void aFileWithoutHeadingsIsLeftToTheReader() {
        final SheetImport taken = Sheets.taken("Pump,54 W,5 m\nFan,9 W,2 m\n");
        assertThat(taken.circuits()).isEmpty();
        assertThat(Sheets.kinds(taken)).containsOnly(LEFT_OUT);
    }

    @Test
    void whatIsNoCsvFileIsRefused() {
        assertThat(refusal(new byte[] {'P', 'K', 3, 4})).contains("workbook");
        assertThat(refusal(" \n\n".getBytes(StandardCharsets.UTF_8))).contains("empty");
        assertThat(refusal("a,".repeat(300).concat("b").getBytes(StandardCharsets.UTF_8)))
                .contains("200 columns");
        assertThat(refusal("a,b\n".repeat(200_001).getBytes(StandardCharsets.UTF_8)))
                .contains("200000 rows");
    }

    private static String refusal(final byte[] bytes) {
        return ((SheetRead.Refused) SheetReader.read(bytes)).message();
    }

    @Test
    void moreCircuitsThanAVehicleHoldsAreCounted() {
        final StringBuilder text = new StringBuilder("Circuit,Power (W)\n");
        for (int i = 0; i < 510; i++) {
            text.append("c").append(i).append(",5\n");
        }
        final SheetImport taken = Sheets.taken(text.toString());
        final Vehicle van = Vehicle.named("Van").plus(Circuit.named("own"));
        assertThat(taken.into(van).circuits()).hasSize(Vehicle.MOST_CIRCUITS);
        assertThat(taken.tooMany(van)).isEqualTo(11);
    }

    @Test
    void noiseNeverBreaksTheReaderAndEveryRowIsAccountedFor() {
        final Random random = new Random(7);
        final String letters = ",;\t\"'=\n\r aW5.#-\uFEFF\u0000";
        for (int file = 0; file < 2000; file++) {
            final StringBuilder text = new StringBuilder("Circuit,Power (W)\nPump,5\n");
            for (int i = random.nextInt(120); i > 0; i--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            if (SheetReader.read(text.toString().getBytes(StandardCharsets.UTF_8))
                    instanceof SheetRead.Whole whole) {
                Sheets.taken(whole.sheet());
            }
        }
    }
}
