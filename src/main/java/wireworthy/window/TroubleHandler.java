package wireworthy.window;

import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import wireworthy.record.ErrorLog;
import wireworthy.record.Settings;

/** Catches what nobody else caught: writes it to the log and says so on a card. */
final class TroubleHandler implements Thread.UncaughtExceptionHandler {
    private final ErrorLog log;
    private final Shell shell;

    TroubleHandler(final ErrorLog log, final Shell shell) {
        this.log = log;
        this.shell = shell;
    }

    /** Says that the program could not start, in a window that holds nothing else. */
    static void alone(final Stage stage, final ErrorLog log, final Throwable error) {
        final Trouble trouble = Trouble.of(error);
        write(log, trouble);
        final Scene scene = new Scene(new TroubleCard(trouble, log.file(), stage::close));
        Looks.dress(scene, Theme.LIGHT, Settings.SMALLEST_TEXT);
        stage.setScene(scene);
        stage.show();
    }

    @Override
    public void uncaughtException(final Thread thread, final Throwable error) {
        final Trouble trouble = Trouble.of(error);
        write(log, trouble);
        if (Platform.isFxApplicationThread()) {
            show(trouble);
        } else {
            Platform.runLater(() -> show(trouble));
        }
    }

    private void show(final Trouble trouble) {
        shell.lay(new TroubleCard(trouble, log.file(), shell::lift));
    }

    private static void write(final ErrorLog log, final Trouble trouble) {
        final String time =
                ZonedDateTime.now(ZoneId.systemDefault())
                        .truncatedTo(ChronoUnit.SECONDS)
                        .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
        try {
            log.add(time + " " + trouble.details());
        } catch (UncheckedIOException e) {
            // The log itself is out of reach; the standard error stream is all that is left.
            System.err.println(e.getMessage());
            System.err.println(trouble.details());
        }
    }
}
