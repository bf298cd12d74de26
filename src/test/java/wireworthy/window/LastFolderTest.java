package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dialog for files begins where the last one ended. */
class LastFolderTest {
    @TempDir Path home;

    private LastFolder last;
    private Path stick;

    @BeforeEach
    void begin() throws IOException {
        last = new LastFolder(home);
        stick = Files.createDirectory(home.resolve("stick"));
    }

    @Test
    void theFirstBeginsAtHome() {
        assertThat(last.begin()).contains(home);
    }

    @Test
    void afterAFileTheNextBeginsBesideIt() {
        last.file(stick.resolve("sheet.json"));
        assertThat(last.begin()).contains(stick);
    }

    @Test
    void afterAFolderTheNextBeginsInIt() {
        last.folder(stick);
        assertThat(last.begin()).contains(stick);
    }

    /** The system decides then; it would refuse to open in a folder that is not there. */
    @Test
    void aStickTakenOutIsNotBegunAt() throws IOException {
        last.folder(stick);
        Files.delete(stick);
        assertThat(last.begin()).isEmpty();
        Files.createDirectory(stick);
        assertThat(last.begin()).contains(stick);
    }

    @Test
    void aFileNamedAloneLiesWhereTheProgramRuns() {
        last.file(Path.of("sheet.json"));
        assertThat(last.begin()).contains(Path.of("").toAbsolutePath());
    }
}
