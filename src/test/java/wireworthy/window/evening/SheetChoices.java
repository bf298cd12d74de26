package wireworthy.window.evening;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.RadioButton;
import javafx.stage.Stage;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.window.Background;
import wireworthy.window.MainWindow;

/**
 * Chooses in Make a sheet, each choice many times, and says how long a processor was busy on the
 * window's thread with the longest piece of it: the press, or what comes of it, with CSS and
 * layout. The first time, when nothing is warm, stands apart.
 */
public final class SheetChoices {
    private static final int WARM = 3;
    private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();
    private static final double NANOS = 1e6;

    private static final List<String> CHOICES =
            List.of(
                    "drop · ",
                    "easy",
                    "mm²",
                    "24 V",
                    "the same for all",
                    "own ones for each",
                    "Letter",
                    "one by one",
                    "by skill",
                    "Second evening: a fuse for the cable",
                    "First evening: watts, volts, amps",
                    "Third evening: volts that arrive",
                    "Fourth evening: a whole circuit",
                    "None: a choice of my own",
                    "Other problems and numbers",
                    "code names",
                    "by number");

    private final Map<String, List<Long>> results = new TreeMap<>();
    private final List<Long> busy = new ArrayList<>();
    private final AtomicInteger waiting = new AtomicInteger();
    private final ExecutorService worker = Executors.newSingleThreadExecutor();
    private Parent root = new Group();

    private SheetChoices() {}

    public static void main(final String[] arguments) throws Exception {
        Platform.startup(() -> {});
        new SheetChoices().measure(Integer.getInteger("times", 20));
        System.exit(0);
    }

    private final class Timed implements Background {
        @Override
        public <T> void run(final Supplier<T> work, final Consumer<T> then) {
            waiting.incrementAndGet();
            worker.execute(
                    () -> {
                        final T result = work.get();
                        Platform.runLater(
                                () -> {
                                    timed(() -> then.accept(result));
                                    waiting.decrementAndGet();
                                });
                    });
        }
    }

    private void timed(final Runnable done) {
        final long from = CPU.getCurrentThreadCpuTime();
        done.run();
        root.applyCss();
        root.layout();
        busy.add(CPU.getCurrentThreadCpuTime() - from);
    }

    private void measure(final int times) throws Exception {
        final Path folder = Files.createTempDirectory("choices");
        final EveningDesk desk = TestDesks.desk(folder, folder);
        onWindow(
                () -> {
                    final SettingsKeeper settings =
                            new SettingsKeeper(new SettingsFile(folder.resolve("settings.json")));
                    final EveningPlace place =
                            new EveningPlace(List.of(new MakePart(desk)), settings);
                    final MainWindow window =
                            new MainWindow(List.of(place), settings, new Timed()).open();
                    final Stage stage = new Stage();
                    stage.setScene(window.scene());
                    stage.show();
                    root = window.scene().getRoot();
                });
        settle();
        for (int round = 0; round < WARM + times; round++) {
            for (final String choice : CHOICES) {
                busy.clear();
                onWindow(() -> timed(() -> press(choice)));
                settle();
                if (round == 0 || round >= WARM) {
                    all(choice + (round == 0 ? " (first)" : ""))
                            .add(busy.stream().mapToLong(Long::longValue).max().orElse(0));
                }
            }
        }
        say();
    }

    private void say() {
        results.forEach(
                (choice, all) -> {
                    final List<Long> sorted = all.stream().sorted().toList();
                    System.out.printf(
                            Locale.ROOT,
                            "%-50s median %6.1f ms   worst %6.1f ms%n",
                            choice,
                            sorted.get(sorted.size() / 2) / NANOS,
                            sorted.get(sorted.size() - 1) / NANOS);
                });
    }

    private List<Long> all(final String choice) {
        return results.computeIfAbsent(choice, any -> new ArrayList<>());
    }

    private void press(final String text) {
        final List<Node> all = new ArrayList<>();
        for (final String kind : List.of(".check-box", ".radio-button", ".button")) {
            all.addAll(root.lookupAll(kind));
        }
        for (final Node each : all) {
            if (each instanceof Labeled labeled
                    && String.valueOf(labeled.getText()).startsWith(text)) {
                if (each instanceof CheckBox box) {
                    box.fire();
                } else if (each instanceof RadioButton radio) {
                    radio.fire();
                } else if (each instanceof ButtonBase button) {
                    button.fire();
                }
                return;
            }
        }
    }

    private void settle() throws Exception {
        do {
            onWindow(() -> {});
            Thread.sleep(5);
        } while (waiting.get() > 0);
        onWindow(() -> {});
    }

    private static void onWindow(final Runnable done) throws Exception {
        final CountDownLatch latch = new CountDownLatch(1);
        Platform.runLater(
                () -> {
                    try {
                        done.run();
                    } finally {
                        latch.countDown();
                    }
                });
        if (!latch.await(60, TimeUnit.SECONDS)) {
            throw new IllegalStateException("the window stands");
        }
    }
}
