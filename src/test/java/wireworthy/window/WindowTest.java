package wireworthy.window;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationTest;
import wireworthy.record.DataFolder;
import wireworthy.record.ErrorLog;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;

/** A window with the places of the test, used through keys and mouse as a person does. */
abstract class WindowTest extends ApplicationTest {
    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    protected static Path folder;

    protected SettingsKeeper settings;
    protected MainWindow window;
    protected Stage stage;

    /** The places to put in the window. */
    protected abstract List<Place> places();

    @Override
    public void start(final Stage onStage) {
        final DataFolder data = new DataFolder(folder);
        stage = onStage;
        settings = new SettingsKeeper(new SettingsFile(data.settings()));
        window = new MainWindow(places(), settings, Background.atOnce()).open();
        Thread.currentThread()
                .setUncaughtExceptionHandler(new TroubleHandler(new ErrorLog(data.log()), window));
        stage.setScene(window.scene());
        // A test before may have made it smaller.
        stage.sizeToScene();
        stage.show();
    }

    /** Whether a text can be read in the window now. */
    protected boolean reads(final String text) {
        final String plain = text.replace('\u00a0', ' ');
        return lookup((Node it) -> plain.equals(text(it).replace('\u00a0', ' ')))
                .queryAll()
                .stream()
                .anyMatch(it -> it.isVisible() && it.getScene() != null);
    }

    private static String text(final Node node) {
        if (node instanceof Labeled labeled) {
            return String.valueOf(labeled.getText()).replace('\u00a0', ' ');
        }
        return node instanceof Text plain ? plain.getText().replace('\u00a0', ' ').strip() : "";
    }
}
