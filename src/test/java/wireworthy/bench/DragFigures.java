package wireworthy.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Slider;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.PickResult;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import wireworthy.lessons.Block;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureKind;
import wireworthy.lessons.Lesson;
import wireworthy.lessons.Lessons;
import wireworthy.window.Looks;
import wireworthy.window.Theme;
import wireworthy.window.figures.LiveFigures;
import wireworthy.window.parts.Pages;
import wireworthy.working.Solver;

/**
 * Drags every handle of the named figures, or of all, a thousand moves each, or flips the switches,
 * and prints what a move costs this thread in milliseconds: the figure worked anew, then CSS,
 * layout and painting, which stands on the same thread with {@code -Dquantum.singlethreaded=true}.
 */
public final class DragFigures {
    private static final int WARM_UP = 200;
    private static final int MOVES = Integer.getInteger("moves", 1000);
    private static final int THERE_AND_BACK = 80;
    private static final double NANOS = 1e6;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private DragFigures() {}

    public static void main(final String[] arguments) {
        Application.launch(Dragging.class, arguments);
    }

    /** A window with one figure after the other. */
    public static final class Dragging extends Application {
        private final Solver solver = new Solver();
        private Scene scene = new Scene(new StackPane());
        private Iterator<Drag> drags = List.<Drag>of().iterator();

        /** One handle or switch of a figure. */
        private record Drag(Figure figure, int part) {}

        @Override
        public void start(final Stage stage) {
            scene = new Scene(new StackPane(), 1280, 860);
            Looks.dress(scene, Theme.LIGHT, 100);
            stage.setScene(scene);
            stage.show();
            drags = drags().iterator();
            System.out.println(
                    "figure, handle; ms of this thread: 50 %, 99 %, most; of that worked anew,"
                            + " laid out (50 %); ms by the clock: 50 %, 99 %");
            next();
        }

        private List<Drag> drags() {
            final List<Drag> all = new ArrayList<>();
            for (final FigureKind kind : FigureKind.values()) {
                if (!getParameters().getRaw().isEmpty()
                        && !getParameters().getRaw().contains(kind.id())) {
                    continue;
                }
                final Figure figure = figure(kind);
                final int parts = parts(LiveFigures.of(figure, solver)).size();
                for (int part = 0; part < parts; part++) {
                    all.add(new Drag(figure, part));
                }
            }
            return all;
        }

        private Figure figure(final FigureKind kind) {
            final Path kept = Path.of("src/test/resources/wireworthy/figures");
            final Lessons lessons = Lessons.read(solver, Optional.of(kept));
            return lessons.contents().stream()
                    .flatMap(heading -> lessons.lesson(heading.id()).stream())
                    .map(Lesson::screens)
                    .flatMap(List::stream)
                    .flatMap(screen -> screen.blocks().stream())
                    .filter(Block.LiveFigure.class::isInstance)
                    .map(block -> ((Block.LiveFigure) block).figure())
                    .filter(figure -> figure.kind() == kind)
                    .findFirst()
                    .orElseThrow();
        }

        /** The sliders and switches of a figure, in the order they are drawn. */
        private static List<Node> parts(final Node node) {
            if (node instanceof Slider || node instanceof CheckBox) {
                return List.of(node);
            }
            return node instanceof Parent parent
                    ? parent.getChildrenUnmodifiable().stream()
                            .flatMap(child -> parts(child).stream())
                            .toList()
                    : List.of();
        }

        private void next() {
            if (!drags.hasNext()) {
                Platform.exit();
                return;
            }
            final Drag drag = drags.next();
            final Node card = LiveFigures.of(drag.figure(), solver);
            scene.setRoot(Pages.page("Figure", card));
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            new Run(drag, parts(card).get(drag.part())).move();
        }

        /** A thousand moves of one handle. */
        private final class Run {
            private final Drag drag;
            private final Node part;
            private final Runnable before = this::pulseBegins;
            private final Runnable between = this::pulseIsLaidOut;
            private final double[] busy = new double[MOVES];
            private final double[] working = new double[MOVES];
            private final double[] laying = new double[MOVES];
            private final double[] wall = new double[MOVES];
            private final long[] at = new long[4];
            private int moved = -WARM_UP;
            private long dragging;

            Run(final Drag drag, final Node part) {
                this.drag = drag;
                this.part = part;
            }

            /** Moves the handle, then waits for the pulse that shows it. */
            void move() {
                final long began = System.nanoTime();
                at[0] = THREADS.getCurrentThreadCpuTime();
                drag();
                dragging = System.nanoTime() - began;
                at[1] = THREADS.getCurrentThreadCpuTime();
                scene.addPreLayoutPulseListener(before);
                scene.addPostLayoutPulseListener(between);
                Platform.requestNextPulse();
            }

            private void pulseBegins() {
                scene.removePreLayoutPulseListener(before);
                at[2] = THREADS.getCurrentThreadCpuTime();
                final long began = System.nanoTime();
                // Comes after the pulse, painting and all.
                Platform.runLater(() -> shown(System.nanoTime() - began));
            }

            private void pulseIsLaidOut() {
                scene.removePostLayoutPulseListener(between);
                at[3] = THREADS.getCurrentThreadCpuTime();
            }

            private void shown(final long pulse) {
                if (moved >= 0) {
                    working[moved] = (at[1] - at[0]) / NANOS;
                    laying[moved] = (at[3] - at[2]) / NANOS;
                    busy[moved] =
                            working[moved] + (THREADS.getCurrentThreadCpuTime() - at[2]) / NANOS;
                    wall[moved] = (dragging + pulse) / NANOS;
                }
                moved++;
                if (moved < MOVES) {
                    move();
                } else {
                    say();
                    next();
                }
            }

            private void say() {
                final String name =
                        part instanceof CheckBox box ? box.getText() : part.getAccessibleText();
                Stream.of(busy, working, laying, wall).forEach(Arrays::sort);
                System.out.printf(
                        Locale.ROOT,
                        "%-22s %-36s %5.1f %5.1f %5.1f   %5.1f %5.1f   %5.1f %5.1f%n",
                        drag.figure().kind().id(),
                        name,
                        busy[MOVES / 2],
                        busy[MOVES * 99 / 100],
                        busy[MOVES - 1],
                        working[MOVES / 2],
                        laying[MOVES / 2],
                        wall[MOVES / 2],
                        wall[MOVES * 99 / 100]);
            }

            private void drag() {
                if (part instanceof CheckBox box) {
                    box.fire();
                    return;
                }
                final Node thumb = part.lookup(".thumb");
                if (moved == -WARM_UP) {
                    fire(thumb, MouseEvent.MOUSE_PRESSED, 0);
                }
                final double width = ((Slider) part).getWidth();
                final int step = Math.floorMod(moved, 2 * THERE_AND_BACK);
                final double share =
                        Math.min(step, 2 * THERE_AND_BACK - step) / (double) THERE_AND_BACK;
                fire(thumb, MouseEvent.MOUSE_DRAGGED, share * width - thumb.getLayoutX());
            }

            private static void fire(
                    final Node node, final EventType<MouseEvent> type, final double x) {
                final PickResult picked = new PickResult(node, x, 0);
                Event.fireEvent(
                        node,
                        new MouseEvent(
                                type,
                                x,
                                0,
                                x,
                                0,
                                MouseButton.PRIMARY,
                                1,
                                false,
                                false,
                                false,
                                false,
                                true,
                                false,
                                false,
                                true,
                                false,
                                true,
                                picked));
            }
        }
    }
}
