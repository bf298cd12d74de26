package wireworthy.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import javafx.stage.Window;
import wireworthy.Wireworthy;
import wireworthy.record.DataFolder;
import wireworthy.record.Settings;
import wireworthy.record.SettingsFile;

/**
 * Says after how many milliseconds from process start the first place stands on the screen with its
 * content, or with {@code bare} a window with one label; and the peak of resident memory in MiB.
 * Run both in turn on a screen and compare the medians.
 */
public final class StartUp {
    private static final int LOOK_EVERY_MS = 5;

    private StartUp() {}

    /** A window with one label. */
    public static final class Bare extends Application {
        @Override
        public void start(final Stage stage) {
            stage.setScene(new Scene(new Label("One label"), 1280, 860));
            stage.show();
        }
    }

    public static void main(final String[] arguments) {
        final boolean bare = arguments[0].equals("bare");
        final Thread watch = new Thread(() -> watch(bare ? ".label" : ".lesson-screen"));
        watch.setDaemon(true);
        watch.start();
        if (bare) {
            Application.launch(Bare.class);
        } else {
            answerFirstPage(Path.of(arguments[1]));
            Wireworthy.main(new String[] {"--data-dir", arguments[1]});
        }
    }

    /** At the very first start a page of choices would come before the lessons. */
    private static void answerFirstPage(final Path folder) {
        final SettingsFile file = new SettingsFile(new DataFolder(folder).settings());
        final Settings now = file.read();
        if (now.chosen().isEmpty()) {
            file.write(now.withSums(now.sums()));
        }
    }

    private static void watch(final String wanted) {
        boolean watching = false;
        while (!watching) {
            watching = begin(wanted);
        }
    }

    /**
     * Looks at every frame of a window from the moment it shows; false before the toolkit is up.
     */
    private static boolean begin(final String wanted) {
        try {
            Thread.sleep(LOOK_EVERY_MS);
            Platform.runLater(() -> watchWindows(wanted));
            return true;
        } catch (IllegalStateException notYetStarted) {
            return false;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void watchWindows(final String wanted) {
        Window.getWindows()
                .addListener(
                        (ListChangeListener<Window>)
                                change -> {
                                    while (change.next()) {
                                        shown(change.getAddedSubList(), wanted);
                                    }
                                });
        // On a busy machine the window may have been the first to be up.
        shown(Window.getWindows(), wanted);
        Platform.requestNextPulse();
    }

    private static void shown(final List<? extends Window> windows, final String wanted) {
        windows.stream()
                .map(Window::getScene)
                .forEach(it -> it.addPostLayoutPulseListener(() -> look(it, wanted)));
    }

    private static void look(final Scene scene, final String wanted) {
        if (scene.getRoot().lookup(wanted) != null) {
            Platform.runLater(StartUp::say);
        }
    }

    private static void say() {
        final long since = ManagementFactory.getRuntimeMXBean().getStartTime();
        System.out.println((System.currentTimeMillis() - since) + " ms " + peak() + " MiB");
        Runtime.getRuntime().halt(0);
    }

    private static long peak() {
        try {
            return Files.readAllLines(Path.of("/proc/self/status")).stream()
                    .filter(line -> line.startsWith("VmHWM"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                    .findFirst()
                    .orElse(-1);
        } catch (java.io.IOException e) {
            return -1;
        }
    }
}
