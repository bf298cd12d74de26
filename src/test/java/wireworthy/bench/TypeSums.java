package wireworthy.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.vehicle.VehicleFile;
import wireworthy.window.Background;
import wireworthy.window.MainWindow;
import wireworthy.window.check.CheckPlace;
import wireworthy.window.parts.SideList;

/**
 * Opens Check my sums with 60 circuits and types into fields of one of them, a thousand keystrokes
 * each. Prints in milliseconds what a keystroke costs the window's thread, results, CSS, layout and
 * painting, which stands on the same thread with {@code -Dquantum.singlethreaded=true}; the same
 * with the work of the background, the check and saving; then how long it takes by the clock until
 * its results are painted.
 */
public final class TypeSums {
    private static final int WARM_UP = Integer.getInteger("warm.up", 400);
    private static final int STROKES = Integer.getInteger("strokes", 1000);
    private static final double NANOS = 1e6;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final List<String> TYPED = List.of("4", ".", "2", " ", "m");

    private TypeSums() {}

    public static void main(final String[] arguments) {
        Application.launch(Typing.class, arguments);
    }

    /** The place, and one field after the other. */
    public static final class Typing extends Application {
        private final Counting background = new Counting();
        private Optional<Scene> shown = Optional.empty();

        @Override
        public void start(final Stage stage) throws IOException {
            final Path folder = Files.createTempDirectory("type-sums");
            final Path file = folder.resolve("vehicles/sixty.json");
            Files.createDirectories(file.resolveSibling(""));
            VehicleFile.write(file, SixtyCircuits.vehicle());
            Files.writeString(file.resolveSibling("recent.txt"), file.toString());
            final CheckPlace place =
                    new CheckPlace(folder.resolve("vehicles"), () -> SumsInUse.USUAL);
            final SettingsKeeper settings =
                    new SettingsKeeper(new SettingsFile(folder.resolve("settings.json")));
            final Scene scene = new MainWindow(List.of(place), settings, background).open().scene();
            shown = Optional.of(scene);
            stage.setScene(scene);
            stage.show();
            System.out.println(
                    "field, circuits; ms of the window: 50 %, 95 %, 99 %, most;"
                            + " with the background: 50 %, 95 %, 99 %, most;"
                            + " by the clock until painted: 50 %, 95 %, 99 %");
            background.whenIdle(this::opened);
        }

        private void opened() {
            final SideList<?> list = all(root(), SideList.class).findFirst().orElseThrow();
            IntStream.range(0, 6).forEach(i -> press(list, KeyCode.DOWN));
            // The form is there only once the place has been drawn with it.
            Platform.runLater(
                    () -> {
                        root().applyCss();
                        root().layout();
                        new Run(
                                        "given.one-way-length",
                                        () -> new Run("answers.drop", Platform::exit).type())
                                .type();
                    });
        }

        private Parent root() {
            return shown.orElseThrow().getRoot();
        }

        /** Keystrokes in one field. */
        private final class Run {
            private final String name;
            private final Runnable next;
            private final TextField field;
            private final double[] busy = new double[STROKES];
            private final double[] work = new double[STROKES];
            private final double[] wall = new double[STROKES];
            private final Runnable pulse = this::pulse;
            private int typed = -WARM_UP;
            private long began;
            private long cpu;
            private long behind;

            Run(final String name, final Runnable next) {
                this.name = name;
                this.next = next;
                field =
                        all(root(), TextField.class)
                                .filter(it -> String.valueOf(it.getId()).endsWith("]." + name))
                                .findFirst()
                                .orElseThrow();
                field.requestFocus();
                field.clear();
                bringIntoView(field);
            }

            /** One keystroke, then waits until what comes of it is painted. */
            void type() {
                background.whenIdle(
                        () -> {
                            began = System.nanoTime();
                            cpu = THREADS.getCurrentThreadCpuTime();
                            behind = background.cpu();
                            stroke();
                            background.whenIdle(this::worked);
                        });
            }

            private void stroke() {
                final int step = Math.floorMod(typed, 2 * TYPED.size());
                if (step < TYPED.size()) {
                    final String letter = TYPED.get(step);
                    fire(field, KeyEvent.KEY_TYPED, letter, KeyCode.UNDEFINED);
                } else {
                    press(field, KeyCode.BACK_SPACE);
                }
            }

            private void worked() {
                shown.orElseThrow().addPreLayoutPulseListener(pulse);
                Platform.requestNextPulse();
            }

            private void pulse() {
                shown.orElseThrow().removePreLayoutPulseListener(pulse);
                // Comes after the pulse, painting and all.
                Platform.runLater(this::painted);
            }

            private void painted() {
                if (typed >= 0) {
                    busy[typed] = (THREADS.getCurrentThreadCpuTime() - cpu) / NANOS;
                    work[typed] = busy[typed] + (background.cpu() - behind) / NANOS;
                    wall[typed] = (System.nanoTime() - began) / NANOS;
                }
                typed++;
                if (typed < STROKES) {
                    type();
                } else {
                    say();
                    next.run();
                }
            }

            private void say() {
                Stream.of(busy, work, wall).forEach(Arrays::sort);
                System.out.printf(
                        Locale.ROOT,
                        "%-22s %d   %s   %s   %s%n",
                        name,
                        SixtyCircuits.COUNT,
                        told(busy, STROKES / 2, percent(95), percent(99), STROKES - 1),
                        told(work, STROKES / 2, percent(95), percent(99), STROKES - 1),
                        told(wall, STROKES / 2, percent(95), percent(99)));
            }
        }
    }

    private static int percent(final int share) {
        return STROKES * share / 100;
    }

    private static String told(final double[] sorted, final int... places) {
        return IntStream.of(places)
                .mapToObj(place -> String.format(Locale.ROOT, "%5.1f", sorted[place]))
                .collect(Collectors.joining(" "));
    }

    /** A person sees the field they type in; where nothing in view changes, all is painted anew. */
    private static void bringIntoView(final Node node) {
        Node around = node;
        while (!(around instanceof ScrollPane)) {
            around = around.getParent();
        }
        final ScrollPane pane = (ScrollPane) around;
        final Node content = pane.getContent();
        final double top = content.sceneToLocal(node.localToScene(0, 0)).getY();
        final double hidden =
                content.getBoundsInLocal().getHeight() - pane.getViewportBounds().getHeight();
        pane.setVvalue((top - pane.getViewportBounds().getHeight() / 2) / hidden);
    }

    private static void press(final Node node, final KeyCode code) {
        fire(node, KeyEvent.KEY_PRESSED, "", code);
        fire(node, KeyEvent.KEY_RELEASED, "", code);
    }

    private static void fire(
            final Node node,
            final EventType<KeyEvent> type,
            final String text,
            final KeyCode code) {
        Event.fireEvent(node, new KeyEvent(type, text, text, code, false, false, false, false));
    }

    private static <T> Stream<T> all(final Node node, final Class<T> kind) {
        final Stream<T> here = kind.isInstance(node) ? Stream.of(kind.cast(node)) : Stream.empty();
        return node instanceof Parent parent
                ? Stream.concat(
                        here,
                        parent.getChildrenUnmodifiable().stream().flatMap(it -> all(it, kind)))
                : here;
    }

    /**
     * One thread, as in the program; says when nothing is left to do. Used on the window's thread.
     */
    private static final class Counting implements Background {
        private final ExecutorService worker =
                Executors.newSingleThreadExecutor(
                        work -> {
                            final Thread thread = new Thread(work, "background");
                            thread.setDaemon(true);
                            return thread;
                        });
        private int pending;
        private Optional<Runnable> idle = Optional.empty();
        private volatile long cpu;

        /** Nanoseconds that the thread has worked. */
        long cpu() {
            return cpu;
        }

        @Override
        public <T> void run(final Supplier<T> work, final Consumer<T> then) {
            if (!Platform.isFxApplicationThread()) {
                Platform.runLater(() -> run(work, then));
                return;
            }
            pending++;
            worker.execute(
                    () -> {
                        final T result = work.get();
                        cpu = THREADS.getCurrentThreadCpuTime();
                        Platform.runLater(() -> done(result, then));
                    });
        }

        private <T> void done(final T result, final Consumer<T> then) {
            then.accept(result);
            pending--;
            if (pending == 0) {
                final Optional<Runnable> waiting = idle;
                idle = Optional.empty();
                waiting.ifPresent(Runnable::run);
            }
        }

        void whenIdle(final Runnable then) {
            if (pending == 0) {
                then.run();
            } else {
                idle = Optional.of(then);
            }
        }
    }
}
