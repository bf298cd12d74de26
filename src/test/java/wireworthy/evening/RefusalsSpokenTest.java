package wireworthy.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.HandInFile;
import wireworthy.evening.handin.HandIns;
import wireworthy.record.RecordFile;
import wireworthy.record.SetAside;
import wireworthy.rules.Skill;
import wireworthy.texts.Language;

/** Who reads the window in German reads there in German, too, why something does not go. */
class RefusalsSpokenTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final Instant NOW = Instant.parse("2026-03-04T19:05:06Z");

    @TempDir Path folder;

    @BeforeEach
    void german() {
        Language.use(Language.of("de"));
    }

    @AfterEach
    void english() {
        Language.use(Language.ENGLISH);
    }

    @Test
    void ofAMark() {
        final EveningProblem refused =
                catchThrowableOfType(EveningProblem.class, () -> Sheet.marked("0000-0001", SHELF));

        assertThat(refused.text())
                .isEqualTo(
                        "So kann das Blattzeichen nicht lauten: Ein Zeichen darin ist falsch oder"
                                + " vertauscht, fehlt oder ist zu viel. Vergleiche es Gruppe für"
                                + " Gruppe mit dem gedruckten.");
    }

    @Test
    void ofHandIns() throws IOException {
        HandInFile.write(folder, HandIn.begun("0000-0000", 7, "Wren", NOW));
        Files.writeString(folder.resolve("empty.json"), "");
        Files.writeString(folder.resolve("half.json"), "{\"wireworthy\":\"hand-in\"}");

        final Pick pick = Pick.BySkills.of(EnumSet.of(Skill.DROP), 4);
        final Sheet sheet = Sheet.of(new SheetPlan(pick, true, 8, false, 5), SHELF);

        assertThat(HandIns.read(folder, sheet).leftOut())
                .extracting(HandIns.LeftOut::text)
                .containsExactly(
                        "empty.json: die Datei ist leer. Bitte darum, noch einmal abzugeben.",
                        "half.json: „version“ fehlt. Füge „version“ hinzu.",
                        "hand-in-0000-0000-7.json: sie gehört zum Blatt 0000-0000. Lies sie mit"
                                + " diesem Blatt.");
    }

    @Test
    void ofTheRecord() {
        assertThat(new SetAside(folder.resolve("answers.damaged"), 1).words())
                .contains("1 Antwort ließ sich retten")
                .contains("answers.damaged");
        try (RecordFile record = RecordFile.inMemory()) {
            assertThatThrownBy(() -> record.people().add(" "))
                    .hasMessage("Ein Deckname hat 1 bis 40 Buchstaben");
        }
    }
}
