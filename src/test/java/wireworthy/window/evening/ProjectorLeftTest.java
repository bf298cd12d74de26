package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.wish.Wish;
import wireworthy.record.SumsInUse;
import wireworthy.window.FxTest;
import wireworthy.working.Solver;

/** One Esc too many at the wall loses nothing. */
@FxTest
class ProjectorLeftTest {
    private static final Sheet SHEET = Wish.USUAL.withSeed(77).sheet(Shelf.builtIn());

    @TempDir Path folder;

    private final List<Parent> covers = new ArrayList<>();

    private static void press(final Parent root, final String words) {
        root.lookupAll(".button").stream()
                .filter(each -> each instanceof Button it && it.getText().equals(words))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + words))
                .fire();
    }

    private final class Covered extends NoShell {
        @Override
        public void cover(final Parent whole) {
            covers.add(whole);
        }
    }

    @Test
    void theSameSheetShownAgainHasWhatWasCalledOut() {
        final ProjectorPart part =
                new ProjectorPart(
                        TestDesks.desk(folder, folder),
                        new ProjectorDesk(new Solver(), () -> SumsInUse.USUAL));
        final Parent page = part.build(new Covered());
        new Scene(page).snapshot(null);
        ((TextField) page.lookup(".text-field")).setText(SHEET.mark());
        press(page, "Open the sheet");
        page.getScene().snapshot(null);
        press(page, "Show it large");
        press(page, "Show it large");

        assertThat(covers).hasSize(2);
        assertThat(covers.get(1)).isSameAs(covers.get(0));
    }
}
