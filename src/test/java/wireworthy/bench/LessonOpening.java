package wireworthy.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import javafx.util.Duration;
import wireworthy.lessons.Block;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.rules.Skill;
import wireworthy.window.Background;
import wireworthy.window.LessonDesk;
import wireworthy.window.LessonsPlace;
import wireworthy.window.MainWindow;
import wireworthy.working.Solver;

/**
 * Opens the lessons in turn, {@value #OPENINGS} times, in the real window. Says after how many
 * milliseconds the first screen and the whole lesson are laid out, as percentiles over all openings
 * after the first one, and how large the heap is after collection at {@value #EARLY} openings and
 * at the end.
 */
public final class LessonOpening {
    private static final int EARLY = 20;
    private static final int OPENINGS = 200;
    private static final double NANOS_PER_MS = 1e6;
    private static final double BYTES_PER_MIB = 1024.0 * 1024;
    private static final int COLLECTIONS = 4;
    private static final double PAUSE_MS = 200;

    private LessonOpening() {}

    public static void main(final String[] arguments) {
        Application.launch(Opening.class, arguments);
    }

    /** A desk on which nothing is kept. */
    private static final class QuietDesk implements LessonDesk {
        @Override
        public Optional<String> last() {
            return Optional.empty();
        }

        @Override
        public void opened(final String lesson) {}

        @Override
        public boolean hasRead(final String lesson) {
            return true;
        }

        @Override
        public void read(final String lesson) {}

        @Override
        public Optional<String> state(final List<Skill> skills) {
            return Optional.empty();
        }

        @Override
        public void practise(final Block.Questions questions) {}

        @Override
        public void table(final String id) {}
    }

    /** The window; started by a class that is none, as without modules it has to be. */
    public static final class Opening extends Application {
        private final Solver solver = new Solver();
        private final Lessons lessons = Lessons.read(solver, Optional.empty());
        private final List<String> ids =
                lessons.contents().stream().map(LessonHeading::id).toList();
        private final LessonsPlace place = new LessonsPlace(() -> lessons, solver, new QuietDesk());
        private final List<Double> firsts = new ArrayList<>();
        private final List<Double> wholes = new ArrayList<>();
        private Scene scene = new Scene(new Pane());
        private int opened;
        private long begun;
        private boolean firstSeen = true;
        private boolean waiting;
        private double early;

        @Override
        public void start(final Stage stage) throws java.io.IOException {
            final SettingsKeeper settings =
                    new SettingsKeeper(
                            new SettingsFile(
                                    java.nio.file.Files.createTempDirectory("lessons")
                                            .resolve("settings.json")));
            final MainWindow window =
                    new MainWindow(List.of(place), settings, Background.onThread()).open();
            scene = window.scene();
            stage.setScene(scene);
            stage.show();
            scene.addPostLayoutPulseListener(this::look);
            openNext();
        }

        private void openNext() {
            if (opened == EARLY) {
                early = heap();
            }
            if (opened == OPENINGS) {
                say();
                return;
            }
            opened++;
            firstSeen = false;
            waiting = true;
            begun = System.nanoTime();
            place.open(ids.get(opened % ids.size()));
            Platform.requestNextPulse();
        }

        /** After each frame: what of the lesson is there now. */
        private void look() {
            if (!waiting) {
                return;
            }
            final int screens = screens();
            final double since = (System.nanoTime() - begun) / NANOS_PER_MS;
            if (screens > 0 && !firstSeen) {
                firstSeen = true;
                firsts.add(since);
            }
            if (screens >= wanted()) {
                waiting = false;
                wholes.add(since);
                pause();
            } else {
                Platform.requestNextPulse();
            }
        }

        /** Long enough for the frames to be drawn: those that wait would count as heap. */
        private void pause() {
            final PauseTransition pause = new PauseTransition(Duration.millis(PAUSE_MS));
            pause.setOnFinished(event -> openNext());
            pause.play();
        }

        private int wanted() {
            return lessons.lesson(ids.get(opened % ids.size())).orElseThrow().screens().size();
        }

        private int screens() {
            return scene.lookup(".lesson") instanceof Pane page
                    ? (int) page.getChildren().stream().filter(Opening::isScreen).count()
                    : 0;
        }

        private static boolean isScreen(final Node node) {
            return node.getStyleClass().contains("lesson-screen");
        }

        private void say() {
            final double late = heap();
            System.out.printf("first screen, ms: %s%n", percentiles(firsts));
            System.out.printf("whole lesson, ms: %s%n", percentiles(wholes));
            System.out.printf(
                    "heap after collection: %.1f MiB at %d openings, %.1f MiB at %d (%+.1f %%)%n",
                    early, EARLY, late, OPENINGS, 100 * (late - early) / early);
            Platform.exit();
            Runtime.getRuntime().halt(0);
        }

        /** All but the first opening. */
        private static String percentiles(final List<Double> times) {
            final List<Double> sorted = times.stream().skip(1).sorted().toList();
            return "p50 %.0f, p95 %.0f, p99 %.0f, most %.0f"
                    .formatted(at(sorted, 0.5), at(sorted, 0.95), at(sorted, 0.99), at(sorted, 1));
        }

        private static double at(final List<Double> sorted, final double share) {
            return sorted.get((int) Math.round(share * (sorted.size() - 1)));
        }

        private static double heap() {
            for (int i = 0; i < COLLECTIONS; i++) {
                System.gc();
            }
            final Runtime runtime = Runtime.getRuntime();
            return (runtime.totalMemory() - runtime.freeMemory()) / BYTES_PER_MIB;
        }
    }
}
