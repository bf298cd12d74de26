package wireworthy.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import wireworthy.record.DataFolder;
import wireworthy.record.ErrorLog;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.texts.Language;

/** The program in its window. */
public final class WireworthyApp extends Application {
    /** JavaFX warns when it is not started from modules; that says nothing to a person. */
    private static final String CLASS_PATH_WARNING = "Unsupported JavaFX configuration";

    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    /** Begun before the toolkit is, which makes this object only later. */
    private static volatile Optional<Ahead> ahead = Optional.empty();

    private Runnable atEnd = () -> {};

    /** Opens the window and returns when it has been closed. */
    public static void open(final DataFolder folder) {
        TOOLKIT.setFilter(it -> !it.getMessage().startsWith(CLASS_PATH_WARNING));
        ahead = Optional.of(Ahead.begin(folder));
        Application.launch(WireworthyApp.class, folder.path().toString());
    }

    @Override
    public void start(final Stage stage) {
        Looks.prepare();
        final DataFolder folder = new DataFolder(Path.of(getParameters().getRaw().get(0)));
        final ErrorLog log = new ErrorLog(folder.log());
        stage.setTitle("Wireworthy");
        try {
            open(stage, folder, log);
        } catch (RuntimeException failure) {
            TroubleHandler.alone(stage, log, failure);
        }
    }

    @Override
    public void stop() {
        atEnd.run();
    }

    private void open(final Stage stage, final DataFolder folder, final ErrorLog log) {
        final SettingsKeeper settings = new SettingsKeeper(new SettingsFile(folder.settings()));
        Language.use(Language.of(settings.now().language()));
        final MainWindow window =
                fill(
                        stage,
                        folder,
                        log,
                        settings,
                        ahead.orElseGet(() -> Ahead.begin(folder)),
                        Optional.empty());
        StagePlacing.restore(stage, settings);
        stage.show();
        window.start();
        NextFrame.then(window.scene().getRoot(), () -> stage.getIcons().add(icon()));
    }

    /** Puts a new window on the stage: at the start, and whenever another language is chosen. */
    private MainWindow fill(
            final Stage stage,
            final DataFolder folder,
            final ErrorLog log,
            final SettingsKeeper settings,
            final Ahead read,
            final Optional<Places> before) {
        final Places places =
                new Places(folder, settings, Clock.system(ZoneId.systemDefault()), read);
        atEnd =
                () -> {
                    places.close();
                    settings.close();
                };
        final MainWindow window =
                new MainWindow(places.all(), settings, Background.onThread()).with(places.pages());
        places.goBy(window::go);
        before.ifPresent(places::takeOver);
        window.speakBy(
                place -> {
                    places.close();
                    fill(stage, folder, log, settings, Ahead.again(folder), Optional.of(places))
                            .go(place);
                });
        Thread.setDefaultUncaughtExceptionHandler(new TroubleHandler(log, window));
        stage.setScene(window.scene());
        return window;
    }

    private static Image icon() {
        return new Image("/wireworthy/window/icon.png");
    }
}
