package wireworthy.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
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
import wireworthy.window.FileAsking;
import wireworthy.window.LastFolder;
import wireworthy.window.LessonDesk;
import wireworthy.window.LessonsPlace;
import wireworthy.window.MainWindow;
import wireworthy.working.Solver;

/**
 * Opens the lessons in turn, {@value #OPENINGS} times, in the real window. Says after how many
 * milliseconds the first screen and the whole lesson are laid out, as percentiles over all openings
 * after the first one, by the clock and by the work of the window's thread, and how large the heap
 * is after collection at {@value #EARLY} openings and at the end. {@code -Dopenings=60} is a quick
 * look.
 */
public final class LessonOpening {
    private static final int EARLY = 20;
    private static final int OPENINGS = 200;
    private static final int WANTED = Integer.getInteger("openings", OPENINGS);
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
        public void practise(final List<Block.Questions> questions) {}

        @Override
        public void table(final String id) {}

        @Override
        public FileAsking files() {
            return FileAsking.bySystem(LastFolder.keptIn(Path.of("last-folder.txt"), Path.of("")));
        }
    }

    /** The window; started by a class that is none, as without modules it has to be. */
    public static final class Opening extends Application {
        private final Solver solver = new Solver();
        private final Lessons lessons = Lessons.read(solver, Optional.empty());
        private final List<String> ids =
                lessons.contents().stream().map(LessonHeading::id).toList();
        private final LessonsPlace place = new LessonsPlace(() -> lessons, solver, new QuietDesk());
        private final Times firsts = new Times("first screen");
        private final Times wholes = new Times("whole lesson");
        private Scene scene = new Scene(new Pane());
        private int opened;
        private Stopwatch begun = Stopwatch.now();
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
            if (opened == WANTED) {
                say();
                return;
            }
            opened++;
            firstSeen = false;
            waiting = true;
            begun = Stopwatch.now();
            place.open(ids.get(opened % ids.size()));
            Platform.requestNextPulse();
        }

        /** After each frame: what of the lesson is there now. */
        private void look() {
            if (!waiting) {
                return;
            }
            final int screens = screens();
            if (screens > 0 && !firstSeen) {
                firstSeen = true;
                firsts.add(begun);
            }
            if (screens >= wanted()) {
                waiting = false;
                wholes.add(begun);
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
            firsts.say();
            wholes.say();
            System.out.printf(
                    "heap after collection: %.1f MiB at %d openings, %.1f MiB at %d (%+.1f %%)%n",
                    early, EARLY, late, WANTED, 100 * (late - early) / early);
            Platform.exit();
            Runtime.getRuntime().halt(0);
        }

        private static double heap() {
            for (int i = 0; i < COLLECTIONS; i++) {
                System.gc();
            }
            final Runtime runtime = Runtime.getRuntime();
            return (runtime.totalMemory() - runtime.freeMemory()) / BYTES_PER_MIB;
        }
    }

    /** When something began, by the clock and by the work of the thread. */
    private record Stopwatch(long clock, long work) {
        static Stopwatch now() {
            return new Stopwatch(
                    System.nanoTime(),
                    ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime());
        }
    }

    /** What took how long each time. */
    private static final class Times {
        private final String name;
        private final List<Double> clock = new ArrayList<>();
        private final List<Double> work = new ArrayList<>();

        Times(final String name) {
            this.name = name;
        }

        void add(final Stopwatch begun) {
            final Stopwatch now = Stopwatch.now();
            clock.add((now.clock() - begun.clock()) / NANOS_PER_MS);
            work.add((now.work() - begun.work()) / NANOS_PER_MS);
        }

        void say() {
            System.out.printf("%s, ms by the clock: %s%n", name, percentiles(clock));
            System.out.printf("%s, ms of work:      %s%n", name, percentiles(work));
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
    }
}
