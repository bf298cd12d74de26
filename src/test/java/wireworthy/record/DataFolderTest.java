package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {
    private static final Path HOME = Path.of("/home/robin");

    @Test
    void linuxKeepsDataWhereXdgSays() {
        assertThat(folder("Linux", Map.of("XDG_DATA_HOME", "/data")))
                .isEqualTo(Path.of("/data/wireworthy"));
    }

    @Test
    void linuxWithoutAUsableXdgFolderKeepsDataInTheHome() {
        final Path usual = Path.of("/home/robin/.local/share/wireworthy");
        assertThat(folder("Linux", Map.of())).isEqualTo(usual);
        assertThat(folder("Linux", Map.of("XDG_DATA_HOME", "not/absolute"))).isEqualTo(usual);
    }

    @Test
    void macOsKeepsDataInTheLibrary() {
        assertThat(folder("Mac OS X", Map.of()))
                .isEqualTo(Path.of("/home/robin/Library/Application Support/wireworthy"));
    }

    @Test
    void windowsKeepsDataWhereAppDataSays() {
        assertThat(folder("Windows 11", Map.of("APPDATA", "/roaming")))
                .isEqualTo(Path.of("/roaming/wireworthy"));
        assertThat(folder("Windows 11", Map.of()))
                .isEqualTo(Path.of("/home/robin/AppData/Roaming/wireworthy"));
    }

    private static Path folder(final String system, final Map<String, String> environment) {
        return DataFolder.standard(system, environment, HOME).path();
    }
}
