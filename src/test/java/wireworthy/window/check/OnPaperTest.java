package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.record.SumsInUse;
import wireworthy.window.Background;
import wireworthy.window.FxTest;

/** What is taken along is written where one said. */
@FxTest
class OnPaperTest {
    @TempDir private Path folder;
    private VehicleModel model;
    private Saving saving;

    @BeforeEach
    void begin() {
        final Background atOnce = Background.atOnce();
        model = new VehicleModel(new Shelf(folder.resolve("v")), () -> SumsInUse.USUAL, atOnce);
        saving = new Saving(atOnce);
        model.openExample();
    }

    @AfterEach
    void close() {
        model.close();
    }

    private void press(final String button, final Dialogs dialogs) {
        final OnPaper paper = new OnPaper(model, saving, dialogs);
        final Scene scene = new Scene(paper);
        final String wanted = CheckTexts.of(button);
        assertThat(buttons(scene.getRoot(), wanted)).as(wanted).isEqualTo(1);
    }

    /** How many buttons of that text there are; each is pressed. */
    private static long buttons(final Parent part, final String text) {
        long pressed = 0;
        for (final var node : part.getChildrenUnmodifiable()) {
            if (node instanceof Button button && button.getText().equals(text)) {
                button.fire();
                pressed++;
            } else if (node instanceof Parent inner) {
                pressed += buttons(inner, text);
            }
        }
        return pressed;
    }

    @ParameterizedTest
    @CsvSource({"paper.save, .pdf, %PDF-", "sheet.save, .csv, Circuit"})
    void theFileIsWritten(final String button, final String ending, final String begins)
            throws IOException {
        final Chosen dialogs = new Chosen(folder.resolve("taken-along" + ending));
        press(button, dialogs);
        assertThat(dialogs.proposed.getFileName()).hasToString("the-heron" + ending);
        final String text = Files.readString(dialogs.file, StandardCharsets.ISO_8859_1);
        assertThat(text.substring(0, 20)).contains(begins);
        assertThat(text.length()).isGreaterThan(1000);
        assertThat(saving.said().get().text()).contains("taken-along" + ending);
        assertThat(saving.said().get().trouble()).isFalse();
    }

    @Test
    void theSameVehicleGivesTheSamePages() throws IOException {
        final Chosen one = new Chosen(folder.resolve("one.pdf"));
        final Chosen other = new Chosen(folder.resolve("other.pdf"));
        press("paper.save", one);
        press("paper.save", other);
        assertThat(one.file).hasSameBinaryContentAs(other.file);
    }

    @Test
    void whereNothingCanBeWrittenThatIsSaid() throws IOException {
        final Path file = Files.writeString(folder.resolve("file"), "no folder");
        press("sheet.save", new Chosen(file.resolve("along.csv")));
        assertThat(saving.said().get().trouble()).isTrue();
        assertThat(saving.said().get().text()).contains("along.csv");
    }

    /** Answers with one file. */
    private static final class Chosen implements Dialogs {
        private final Path file;
        private Path proposed = Path.of("");

        Chosen(final Path file) {
            this.file = file;
        }

        @Override
        public Optional<Path> open(final Window over, final String kind, final String ending) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> save(final Window over, final String kind, final Path proposal) {
            proposed = proposal;
            return Optional.of(file);
        }
    }
}
