package wireworthy.evening.handin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;

class SheetFileTest {
    @TempDir Path folder;

    @ParameterizedTest
    @EnumSource
    void comesBackAsItWas(final Explained explained) throws IOException {
        final Path file = folder.resolve("sheet.json");
        final SheetFile sheet = new SheetFile("AB", explained, CodeNames.read("Wren, Swift"));
        sheet.write(file);
        assertThat(SheetFile.read(file)).isEqualTo(sheet);
    }

    @Test
    void numbersWithoutNamesComeBack() throws IOException {
        final Path file = folder.resolve("sheet.json");
        final SheetFile sheet = new SheetFile("AB", Explained.NOW, CodeNames.numbers(12));
        sheet.write(file);
        assertThat(SheetFile.read(file)).isEqualTo(sheet);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "{\"wireworthy\": \"hand-in\"}", "{\"version\": 1}"})
    void anythingElseIsRefused(final String text) throws IOException {
        final Path file = Files.writeString(folder.resolve("sheet.json"), text);
        assertThatThrownBy(() -> SheetFile.read(file)).isInstanceOf(EveningProblem.class);
    }
}
