package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
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
        final Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-verbose:class",
                                "-cp",
                                System.getProperty("java.class.path"),
                                "wireworthy.Wireworthy",
                                "--version")
                        .redirectErrorStream(true)
                        .start();
        final String output =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(output).contains("wireworthy.command.WireworthyCommand");
        assertThat(output.lines().filter(it -> it.contains("] javafx."))).isEmpty();
    }

    private int run(final String... arguments) {
        final CommandLine line = WireworthyCommand.line(opened::add);
        line.setOut(new PrintWriter(said));
        line.setErr(new PrintWriter(said));
        return line.execute(arguments);
    }
}
