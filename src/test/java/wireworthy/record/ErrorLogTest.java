package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ErrorLogTest {
    @TempDir private Path folder;

    @Test
    void entriesFollowEachOther() {
        final ErrorLog log = new ErrorLog(folder.resolve("new/wireworthy.log"));
        log.add("first");
        log.add("second");
        assertThat(log.file()).hasContent("first\nsecond\n");
    }

    @Test
    void aLogGrownLargeIsSetAsideOnce() throws IOException {
        final Path file = folder.resolve("wireworthy.log");
        Files.writeString(file, "x".repeat(1024 * 1024 + 1));
        new ErrorLog(file).add("after");
        assertThat(file).hasContent("after\n");
        assertThat(folder.resolve("wireworthy.log.old")).hasSize(1024 * 1024 + 1);
    }
}
