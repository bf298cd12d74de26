package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BanksTest {
    private static final String HEAD =
            "{\"bank\": \"b\", \"title\": \"B\", \"version\": 1, \"templates\": [\n";
    private static final String SOUND =
            """
            {"id": "one", "skill": "current-from-power", "difficulty": 0,
             "text": "The till takes {load-power} from {supply-voltage}.",
             "ask": "What current?", "drawing": "lamp",
             "given": {"load-power": {"from": 20, "to": 95, "step": 1, "unit": "W"},
                       "supply-voltage": "12 V"},
             "find": "load-current"}""";

    private static Banks read(final String... templates) {
        final String text = HEAD + String.join(",\n", templates) + "\n]}";
        return Banks.of(List.of(new ContentFile.Text("b.json", text)));
    }

    @Test
    void readsASoundBank() {
        final Banks banks = read(SOUND);

        assertThat(banks.problems()).isEmpty();
        assertThat(banks.template("b", "one").orElseThrow().fullId()).isEqualTo("b/one");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    "difficulty": 0  | "difficulty": 2   | 8 | a whole number was expected
                    "difficulty": 0  | "dificulty": 0    | 8 | "dificulty" is not known here
                    current-from     | curent-from       | 8 | no skill is called "curent-from-power"
                    {load-power}     | {load-pwer}       | 9 | {load-pwer} stands for no given
                    {load-power}     | 20 W              | 9 | the drawn load-power is not in the text
                    "drawing"        | "drawings"        | 10 | "drawings" is not known here
                    : "lamp"         | : "torch"         | 10 | no drawing is called "torch"
                    "step": 1        | "step": 0         | 11 | the range leads nowhere
                    "step": 1        | "step": 1e-9      | 11 | the range has more than a million figures
                    "step": 1        | "step": 1e-99999  | 11 | a number was expected
                    "unit": "W"      | "unit": "m"       | 11 | this can't be worked
                    "unit": "W"      | "units": "W"      | 11 | "units" is not known here
                    "supply-voltage": "12 V" | "supply-voltage": "12 A" | 12 | this can't be worked
                    "supply-voltage": "12 V" | "supply-voltage": 12     | 12 | this given is neither
                    "load-current"   | "load-curent"     | 13 | no quantity to find is called
                    "load-current"   | "drop"            | 11 | this can't be worked
                    """)
    void tellsTheLineOfABrokenTemplateAndLoadsTheRest(
            final String sound, final String broken, final int line, final String message) {
        final String second = SOUND.replace("\"one\"", "\"two\"").replace(sound, broken);
        final Banks banks = read(SOUND, second, SOUND.replace("\"one\"", "\"three\""));

        assertThat(banks.templates()).extracting(Template::id).containsExactly("one", "three");
        assertThat(banks.problems()).hasSize(1);
        final BankProblem problem = banks.problems().get(0);
        assertThat(problem.file()).isEqualTo("b.json");
        assertThat(problem.message()).startsWith(message);
        assertThat(problem.line()).isEqualTo(line);
        assertThat(problem.remedy()).isNotBlank();
    }

    @Test
    void anIdMayStandOnlyOnce() {
        final Banks banks = read(SOUND, SOUND);

        assertThat(banks.templates()).hasSize(1);
        assertThat(banks.problems().get(0).text())
                .isEqualTo("b.json, line 8: this id is taken above. Give it another id.");
    }

    @Test
    void tellsWhereAFileStopsBeingJson() {
        final Banks banks =
                Banks.of(
                        List.of(
                                new ContentFile.Text("a.json", HEAD + SOUND + "\n" + SOUND + "]}"),
                                new ContentFile.Text("b.json", HEAD + SOUND + "]}")));

        assertThat(banks.banks()).hasSize(1);
        assertThat(banks.problems()).hasSize(1);
        assertThat(banks.problems().get(0).file()).isEqualTo("a.json");
        assertThat(banks.problems().get(0).line()).isEqualTo(8);
    }

    @Test
    void refusesDeepNestsAndDoubledEntries() {
        final String deep = "[".repeat(5000);
        final Banks banks =
                Banks.of(
                        List.of(
                                new ContentFile.Text("deep.json", deep),
                                new ContentFile.Text("empty.json", ""),
                                new ContentFile.Text("twice.json", "{\"bank\": 1,\n\"bank\": 2}")));

        assertThat(banks.banks()).isEmpty();
        assertThat(banks.problems())
                .extracting(BankProblem::file)
                .containsExactly("deep.json", "empty.json", "twice.json");
        assertThat(banks.problems().get(2).line()).isEqualTo(2);
    }

    @Test
    void refusesTooManyTemplates() {
        final String[] many = new String[501];
        java.util.Arrays.fill(many, SOUND);

        assertThat(read(many).problems().get(0).message())
                .isEqualTo("501 entries are too many, 500 are allowed");
    }

    @Test
    void keepsTheFirstOfTwoBanksWithOneId() {
        final ContentFile one = new ContentFile.Text("one.json", HEAD + SOUND + "]}");
        final ContentFile two = new ContentFile.Text("two.json", HEAD + SOUND + "]}");
        final Banks banks = Banks.of(List.of(one, two));

        assertThat(banks.banks()).hasSize(1);
        assertThat(banks.problems()).extracting(BankProblem::file).containsExactly("two.json");
    }

    @Test
    void readsAnOwnFolderBesidesTheBuiltInOne(@TempDir final Path folder) throws IOException {
        Files.writeString(folder.resolve("own.json"), "\uFEFF" + HEAD + SOUND + "]}");
        Files.writeString(folder.resolve("own.schema.json"), "{}");
        Files.writeString(folder.resolve("notes.txt"), "not a bank");
        Files.write(folder.resolve("latin.json"), new byte[] {'"', (byte) 0xe4, '"'});
        Files.writeString(folder.resolve("large.json"), " ".repeat(2 * 1024 * 1024 + 1));

        final Banks banks = Banks.read(List.of(folder, folder.resolve("missing")));

        assertThat(banks.bank("b")).isPresent();
        assertThat(banks.problems())
                .extracting(BankProblem::message)
                .contains(
                        "the file is not UTF-8 text",
                        "the file is larger than 2 MB",
                        "the folder can't be read");
    }
}
