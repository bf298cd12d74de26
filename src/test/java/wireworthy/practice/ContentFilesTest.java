package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentFilesTest {
    @Test
    void readsAFolderInTheOrderOfNames(@TempDir final Path folder) throws IOException {
        Files.writeString(folder.resolve("02-b.md"), "second");
        Files.writeString(folder.resolve("01-a.md"), "first");
        Files.writeString(folder.resolve("other.txt"), "no lesson");

        assertThat(ContentFiles.in(folder, ".md"))
                .containsExactly(
                        new ContentFile.Text("01-a.md", "first"),
                        new ContentFile.Text("02-b.md", "second"));
    }

    @Test
    void saysWhenAFolderIsMissing(@TempDir final Path folder) {
        assertThat(ContentFiles.in(folder.resolve("none"), ".md"))
                .singleElement()
                .isInstanceOf(ContentFile.Unread.class);
    }
}
