package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wireworthy.record.DataFolder;

class WireworthyCommandTest {
    private final List<DataFolder> opened = new ArrayList<>();
    private final StringWriter said = new StringWriter();

    @Test
    void versionNamesTheProgram() {
        assertThat(run("--version")).isZero();
        assertThat(said.toString()).startsWith("Wireworthy ");
        assertThat(opened).isEmpty();
    }

    @Test
    void helpNamesTheOptions() {
        assertThat(run("--help")).isZero();
        assertThat(said.toString()).contains("Usage: wireworthy", "--data-dir=FOLDER");
    }

    @Test
    void aDataFolderAloneOpensTheWindowOnIt() {
        assertThat(run("--data-dir", "elsewhere")).isZero();
        assertThat(opened).containsExactly(new DataFolder(Path.of("elsewhere")));
    }

    @Test
    void anUnknownOptionIsRefusedWithTheUsage() {
        assertThat(run("--colour")).isEqualTo(2);
        assertThat(said.toString()).contains("--colour", "Usage: wireworthy");
        assertThat(opened).isEmpty();
    }

    @Test
    void theCommandLineStartsWithoutJavaFx() throws IOException {
        final String output = classesLoadedFor("--version");
        assertThat(output).contains("wireworthy.command.WireworthyCommand");
        assertThat(output.lines().filter(it -> it.contains("] javafx."))).isEmpty();
    }

    @Test
    void aPlainFileIsWorkedWithoutWhatIsSlowToStart(@TempDir final Path folder) throws IOException {
        final Path file = folder.resolve("questions.jsonl");
        Files.writeString(
                file,
                "{\"given\": {\"load-power\": \"54 W\", \"supply-voltage\": \"12 V\"},"
                        + " \"find\": \"load-current\"}");
        final String output = classesLoadedFor("work", file.toString());
        assertThat(output).contains("\"text\":\"4.5 A\"");
        assertThat(output).doesNotContain("] picocli.", "databind.json.JsonMapper ");
    }

    private static String classesLoadedFor(final String... arguments) throws IOException {
        final List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-verbose:class",
                                "-cp",
                                System.getProperty("java.class.path"),
                                "wireworthy.Wireworthy"));
        command.addAll(List.of(arguments));
        final Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private int run(final String... arguments) {
        final CommandLine line = WireworthyCommand.line(opened::add);
        line.setOut(new PrintWriter(said));
        line.setErr(new PrintWriter(said));
        return line.execute(arguments);
    }
}
