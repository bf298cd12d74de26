package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.Vehicle;

class SheetWriterTest {
    @ParameterizedTest
    @ValueSource(chars = {',', ';', '\t'})
    void whatIsWrittenIsReadBack(final char separator) {
        final SheetImport taken = Sheets.taken(SheetWriter.text(Heron.vehicle(), separator));
        assertThat(taken.troubles()).isEmpty();
        assertThat(taken.circuits()).isEqualTo(Heron.vehicle().circuits());
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
