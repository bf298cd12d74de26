package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettingsFileTest {
    @TempDir private Path folder;
    private Path path;
    private SettingsFile file;

    @BeforeEach
    void name() {
        path = folder.resolve("new").resolve("settings.json");
        file = new SettingsFile(path);
    }

    @Test
    void settingsAreReadBackAsTheyWereWritten() {
        final Settings settings =
                Settings.DEFAULTS
                        .withDark(true)
                        .withTextSize(150)
                        .withPlace("practice")
                        .withLeftOff(it -> it.withLesson("power").withScreen(3))
                        .withLeftOff(it -> it.withProblem("power", "power/fan/1/7/hunt"))
                        .withSums(
                                SumsInUse.usual(Craft.BOAT, Region.NORTH_AMERICA, WireSizes.AWG)
                                        .withDropLimit(0.1)
                                        .withMargin(1.5))
                        .withWindow(new WindowBounds(10, 20, 1024, 700, true));
        file.write(settings);
        assertThat(file.read()).isEqualTo(settings);
    }

    @Test
    void writingAgainReplacesTheFileAndLeavesNothingElse() {
        file.write(Settings.DEFAULTS);
        file.write(Settings.DEFAULTS.withDark(true));
        assertThat(file.read().dark()).isTrue();
        assertThat(path.getParent()).isDirectoryContaining(it -> it.equals(path));
        assertThat(path.getParent().toFile().list()).containsExactly("settings.json");
    }

    @Test
    void withoutAFileThereAreTheDefaults() {
        assertThat(file.read()).isEqualTo(Settings.DEFAULTS);
    }

    @Test
    void unknownMissingAndMistypedEntriesDoNotMatter() throws IOException {
        write("{\"version\": 9, \"colour\": [1], \"dark\": true, \"textSize\": \"large\"}");
        assertThat(file.read()).isEqualTo(Settings.DEFAULTS.withDark(true));
    }

    @Test
    void sumsThatCanNotBeGiveWayToTheUsualOnes() throws IOException {
        write(
                "{\"sums\": {\"craft\": \"boat\", \"region\": \"the moon\","
                        + " \"cableTable\": \"bell-wire\", \"dropLimit\": 7,"
                        + " \"margin\": -1}}");
        assertThat(file.read().chosen())
                .contains(SumsInUse.usual(Craft.BOAT, Region.ELSEWHERE, WireSizes.MM2));
    }

    @ParameterizedTest
    @CsvSource({"-5, 100", "90, 100", "100, 100", "130, 130", "200, 200", "5000, 200"})
    void textSizeStaysWithinItsLimits(final int written, final int read) throws IOException {
        write("{\"textSize\": " + written + "}");
        assertThat(file.read().textSize()).isEqualTo(read);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{\"dark\": tr", "[1, 2]", "\u0000\u0001", "null"})
    void aDamagedFileIsKeptAsideAndTheDefaultsHold(final String damaged) throws IOException {
        write(damaged);
        assertThat(file.read()).isEqualTo(Settings.DEFAULTS);
        assertThat(path).doesNotExist();
        assertThat(path.resolveSibling("settings.json.damaged")).hasContent(damaged);
    }

    @Test
    void aFileFarTooLargeIsNotRead() throws IOException {
        write("{\"dark\": true" + " ".repeat(100_000) + "}");
        assertThat(file.read()).isEqualTo(Settings.DEFAULTS);
    }

    @Test
    void theKeeperWritesWhatWasChangedAtTheLatestWhenClosed() {
        try (SettingsKeeper keeper = new SettingsKeeper(file)) {
            keeper.change(it -> it.withTextSize(120));
            keeper.change(it -> it.withPlace("tables"));
        }
        assertThat(file.read()).isEqualTo(Settings.DEFAULTS.withTextSize(120).withPlace("tables"));
    }

    @Test
    void theKeeperWritesNothingWhenNothingChanged() {
        try (SettingsKeeper keeper = new SettingsKeeper(file)) {
            keeper.change(it -> it.withDark(false));
        }
        assertThat(path).doesNotExist();
    }

    private void write(final String content) throws IOException {
        Files.createDirectories(path.getParent());
        Files.writeString(path, content);
    }
}
