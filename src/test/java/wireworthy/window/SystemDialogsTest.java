package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands in a dialog before anything is chosen in it. */
class SystemDialogsTest {
    @TempDir Path home;

    private LastFolder read;
    private LastFolder written;
    private SystemDialogs dialogs;

    @BeforeEach
    void begin() {
        read = LastFolder.from(home);
        written = LastFolder.from(home);
        dialogs = new SystemDialogs(read, written);
    }

    @Test
    void itIsSaidWhatIsAskedFor() {
        assertThat(dialogs.toOpen("Open a sheet file", "json").getTitle())
                .isEqualTo("Open a sheet file");
        assertThat(dialogs.toSave("Save as PDF", "summary", "pdf").getTitle())
                .isEqualTo("Save as PDF");
    }

    @Test
    void whereNothingWasWrittenYetAHandInBeginsBesideTheSheet() throws IOException {
        final Path stick = Files.createDirectory(home.resolve("stick"));
        read.file(stick.resolve("sheet.json"));
        assertThat(dialogs.toWriteIn("The stick").getInitialDirectory()).isEqualTo(stick.toFile());

        final Path shared = Files.createDirectory(home.resolve("shared"));
        written.folder(shared);
        assertThat(dialogs.toWriteIn("The stick").getInitialDirectory()).isEqualTo(shared.toFile());
    }

    @Test
    void handInsThatWereReadDoNotMoveWhereOneSaves() throws IOException {
        final Path papers = Files.createDirectory(home.resolve("papers"));
        final Path stick = Files.createDirectory(home.resolve("stick"));
        written.folder(papers);
        read.folder(stick);

        assertThat(dialogs.toSave("Save as PDF", "summary", "pdf").getInitialDirectory())
                .isEqualTo(papers.toFile());
        assertThat(dialogs.toOpen("Open a sheet file", "json").getInitialDirectory())
                .isEqualTo(stick.toFile());
    }
}
