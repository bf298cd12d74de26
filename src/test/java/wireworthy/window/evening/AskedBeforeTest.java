package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.wish.Wish;
import wireworthy.window.Background;
import wireworthy.window.FxTest;

/** What is kept on this machine is taken away only once it was said what that is. */
@FxTest
class AskedBeforeTest {
    private static final Sheet SHEET = Wish.USUAL.withSeed(77).sheet(Shelf.builtIn());

    @TempDir Path folder;

    private static void press(final Parent root, final String words) {
        root.lookupAll(".button").stream()
                .filter(each -> each instanceof Button it && it.getText().equals(words))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + words))
                .fire();
    }

    private static boolean says(final Parent root, final String words) {
        return root.lookupAll(".label").stream()
                .anyMatch(each -> each instanceof Label it && it.getText().contains(words));
    }

    @Test
    void theCodeNamesAndSheets() {
        final MakeModel model = new MakeModel(TestDesks.desk(folder, folder), Background.atOnce());
        model.begin();
        model.change(it -> it.withWho(it.who().withNamed(true).withNames("Finch\nWren")));
        final Parent form = new WhoForm(model, (TestDesks) TestDesks.desk(folder, folder).files());
        new Scene(form).snapshot(null);

        press(form, "Forget code names and sheets on this machine");
        assertThat(model.wish().who().names()).isEqualTo("Finch\nWren");
        assertThat(says(form, "the sheets made or opened on this machine?")).isTrue();
        press(form, "Forget names and sheets");
        assertThat(model.wish().who().names()).isEmpty();
    }

    @Test
    void theAnswersOfALearner() throws IOException {
        final EveningDesk desk =
                TestDesks.desk(folder, Files.createDirectories(folder.resolve("stick")));
        final LaptopModel model = new LaptopModel(desk, Background.atOnce());
        model.openMark(SHEET.mark());
        model.choose((LaptopModel.Who) model.stage().get(), 1, "Wren");
        model.handIn(((LaptopModel.Working) model.stage().get()).work(), folder.resolve("stick"));
        final LaptopModel.Ending ending = (LaptopModel.Ending) model.stage().get();
        final Parent page = new EndingView(model, ending, desk.files());
        new Scene(page).snapshot(null);

        press(page, "Delete my answers from this machine");
        assertThat(desk.begun().all()).hasSize(1);
        press(page, "Delete my answers");
        assertThat(desk.begun().all()).isEmpty();
    }
}
