package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ProofCommandTest {
    private static final String NARROW =
            """
            {"bank": "mine", "title": "Mine", "version": 1, "templates": [
              {"id": "narrow", "skill": "current-from-power", "difficulty": 0,
               "text": "The Heron's till takes {load-power} from 12 V.", "ask": "What current?",
               "drawing": "lamp",
               "given": {"supply-voltage": "12 V",
                         "load-power": {"from": 20, "to": 25, "step": 1, "unit": "W"}},
               "find": "load-current"},
              {"id": "wordy", "kind": "choice", "skill": "circuit-ideas", "difficulty": 0,
               "text": "One lamp.", "ask": "What comes back?",
               "options": [
                 {"text": "All of it", "right": true, "why": "%s"},
                 {"text": "None", "slip": "no-such-slip", "why": "No."}]}
            ]}
            """;

    @TempDir Path folder;
    private final StringWriter said = new StringWriter();

    private int proof(final String... arguments) {
        final CommandLine line = WireworthyCommand.line(any -> {});
        line.setOut(new PrintWriter(said));
        final String[] all = new String[arguments.length + 3];
        System.arraycopy(arguments, 0, all, 3, arguments.length);
        all[0] = "proof";
        all[1] = "--draws";
        all[2] = "120";
        return line.execute(all);
    }

    private void bank(final String text) throws IOException {
        Files.writeString(folder.resolve("mine.json"), text);
    }

    @Test
    void namesFileLineAndRemedyOfWhatALearnerShouldNotMeet() throws IOException {
        bank(
                NARROW.formatted("The same comes back. ".repeat(12))
                        .replace("no-such-slip", "current-used-up"));

        assertThat(proof("--banks", folder.toString())).isEqualTo(2);
        assertThat(said.toString())
                .contains("mine.json, line 2: narrow: ")
                .contains("problems came twice. Widen the ranges.")
                .contains(
                        "mine.json, line 8: wordy: a \"why\" is longer than 45 words. Shorten it.");
    }

    @Test
    void noDrawsProveNothing() {
        final CommandLine line = WireworthyCommand.line(any -> {});
        line.setErr(new PrintWriter(said));

        assertThat(line.execute("proof", "--draws", "0")).isEqualTo(2);
        assertThat(said.toString()).contains("--draws 0 would prove nothing");
    }

    @Test
    void namesASlipThatThereIsNot() throws IOException {
        bank(NARROW.formatted("The same comes back."));

        assertThat(proof("--banks", folder.toString())).isEqualTo(2);
        assertThat(said.toString())
                .contains("mine.json, line 12: no slip is called \"no-such-slip\".");
    }

    @Test
    void namesALessonThatIsHardToReadAndAsksForWhatIsNotThere() throws IOException {
        Files.writeString(
                folder.resolve("90-mine.md"),
                """
                ---
                id: mine
                title: Mine
                skills: [drop]
                builds-on: []
                reviewed: false
                ---
                # Mine

                Notwithstanding considerable electrotechnical sophistication, the aforementioned
                installation necessitates comprehensive verification of interconnected conductors.

                ```questions
                bank: voltage-drop
                templates: [no-such-template]
                ```
                """);

        assertThat(proof("--lessons", folder.toString())).isEqualTo(2);
        assertThat(said.toString())
                .contains("90-mine.md, line 1: hard to read: school year")
                .contains("the bank voltage-drop has no template no-such-template");
    }
}
