package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a dialog for files begins. */
class LastFolderTest {
    @TempDir private Path folder;

    private LastFolder last() {
        return new LastFolder(folder.resolve("kept/last-folder.txt"), folder);
    }

    @Test
    void itBeginsAtHomeOrInItsDocuments() throws IOException {
        assertThat(last().folder()).isEqualTo(folder);
        final Path documents = Files.createDirectory(folder.resolve("Documents"));
        assertThat(last().folder()).isEqualTo(documents);
    }

    @Test
    void itGoesOnWhereAFileWasChosenLastWhileThatFolderIsThere() throws IOException {
        final Path sums = Files.createDirectory(folder.resolve("sums"));
        last().chosen(sums.resolve("twelve.csv"));
        assertThat(last().folder()).isEqualTo(sums);
        Files.delete(sums);
        assertThat(last().folder()).isEqualTo(folder);
    }

    @Test
    void whatCannotBeReadIsPassedOver() throws IOException {
        Files.createDirectories(folder.resolve("kept"));
        Files.write(folder.resolve("kept/last-folder.txt"), new byte[] {0, -1, 7});
        assertThat(last().folder()).isEqualTo(folder);
    }
}
