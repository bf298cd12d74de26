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
        last = LastFolder.from(home);
        stick = Files.createDirectory(home.resolve("stick"));
    }

    private LastFolder kept() {
        return LastFolder.keptIn(home.resolve("kept/last-folder.txt"), home);
    }

    @Test
    void theFirstBeginsAtHomeOrInItsDocuments() throws IOException {
        assertThat(last.begin()).isEqualTo(home);
        final Path documents = Files.createDirectory(home.resolve("Documents"));
        assertThat(last.begin()).isEqualTo(documents);
        assertThat(kept().begin()).isEqualTo(documents);
    }

    @Test
    void afterAFileTheNextBeginsBesideIt() {
        last.file(stick.resolve("sheet.json"));
        assertThat(last.begin()).isEqualTo(stick);
    }

    @Test
    void afterAFolderTheNextBeginsInIt() {
        last.folder(stick);
        assertThat(last.begin()).isEqualTo(stick);
    }

    /** The system would refuse to open in a folder that is not there. */
    @Test
    void aStickTakenOutIsNotBegunAt() throws IOException {
        last.folder(stick);
        Files.delete(stick);
        assertThat(last.begin()).isEqualTo(home);
        Files.createDirectory(stick);
        assertThat(last.begin()).isEqualTo(stick);
    }

    @Test
    void aFileNamedAloneLiesWhereTheProgramRuns() {
        last.file(Path.of("sheet.json"));
        assertThat(last.begin()).isEqualTo(Path.of("").toAbsolutePath());
    }

    @Test
    void whatIsKeptHoldsWhenTheProgramIsStartedAgain() {
        kept().file(stick.resolve("twelve.csv"));
        assertThat(kept().begin()).isEqualTo(stick);
    }

    @Test
    void whatCannotBeReadIsPassedOver() throws IOException {
        Files.createDirectories(home.resolve("kept"));
        Files.write(home.resolve("kept/last-folder.txt"), new byte[] {0, -1, 7});
        assertThat(kept().begin()).isEqualTo(home);
    }
}
