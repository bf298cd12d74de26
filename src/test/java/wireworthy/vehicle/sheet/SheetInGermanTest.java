package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wireworthy.rules.Quantity;
import wireworthy.texts.Language;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Vehicle;

/** What is said about a spreadsheet is said in the language in use. */
class SheetInGermanTest {
    @BeforeEach
    void speakGerman() {
        Language.use(Language.of("de"));
    }

    @AfterEach
    void speakEnglish() {
        Language.use(Language.ENGLISH);
    }

    @Test
    void whatAColumnIsTakenFor() {
        final Sheet sheet =
                Sheets.read("Stromkreis;Leistung (W);mein Spannungsfall\nLampen;20;0,1\n");

        assertThat(Mapping.guess(sheet).columns())
                .extracting(column -> column.target().words())
                .containsExactly(
                        "Name des Stromkreises",
                        "Leistung des Verbrauchers",
                        "dein Wert für: Spannungsfall");
    }

    @Test
    void whyARowWasLeftOut() {
        assertThat(Sheets.taken("Stromkreis;Leistung (W)\nLampen;20\nSumme;20\n").rows())
                .extracting(RowOutcome::reason)
                .contains("sie sieht aus wie eine Summe der anderen");
    }

    /** Files stay in English, so that every machine reads them. */
    @Test
    void theHeadingsWrittenStayInEnglish() {
        final Vehicle vehicle =
                Vehicle.named("Heron")
                        .plus(
                                Circuit.named("Lampen")
                                        .withGiven(Quantity.ONE_WAY_LENGTH, "4 m")
                                        .withAnswer(Quantity.DROP, "0.1 V"));

        assertThat(SheetWriter.text(vehicle, ';').lines().findFirst().orElseThrow())
                .contains("one-way length", "my drop")
                .doesNotContain("Spannung");
    }

    @Test
    void whyAFileWasNotTaken() {
        assertThat(SheetReader.read("  ".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(new SheetRead.Refused("die Datei ist leer", "Wähle eine andere Datei"));
    }
}
