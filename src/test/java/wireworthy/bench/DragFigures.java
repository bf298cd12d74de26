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
 * Drags every handle of every figure, a thousand moves each, or flips its switches, and prints the
 * work of a move in milliseconds: the figure worked anew, then CSS, layout and painting. Painting
 * stands on the same thread with {@code -Dquantum.singlethreaded=true -Dprism.order=sw}. "busy" is
 * the time this thread worked, "wall" includes what other programs took.
 */
public final class DragFigures {
    private static final int WARM_UP = 200;
    private static final int MOVES = 1000;
    private static final int THERE_AND_BACK = 80;
    private static final double NANOS = 1e6;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private DragFigures() {}

    public static void main(final String[] arguments) {
        Application.launch(Dragging.class);
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
            System.out.printf(
                    "%-24s %-34s %s%n", "figure", "handle", "busy: 50 % 95 % 99 % most; wall");
            next();
        }

        private List<Drag> drags() {
            final List<Drag> all = new ArrayList<>();
            for (final FigureKind kind : FigureKind.values()) {
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
            private final double[] busy = new double[MOVES];
            private final double[] wall = new double[MOVES];
            private int moved = -WARM_UP;
            private double moving;
            private double movingWall;

            Run(final Drag drag, final Node part) {
                this.drag = drag;
                this.part = part;
            }

            /** Moves the handle, then waits for the pulse that shows it. */
            void move() {
                final long from = THREADS.getCurrentThreadCpuTime();
                final long fromWall = System.nanoTime();
                drag();
                moving = since(from);
                movingWall = (System.nanoTime() - fromWall) / NANOS;
                final long[] began = new long[2];
                final Runnable[] before = new Runnable[1];
                before[0] =
                        () -> {
                            scene.removePreLayoutPulseListener(before[0]);
                            began[0] = THREADS.getCurrentThreadCpuTime();
                            began[1] = System.nanoTime();
                            // Comes after the pulse, painting and all.
                            Platform.runLater(() -> shown(began[0], began[1]));
                        };
                scene.addPreLayoutPulseListener(before[0]);
                Platform.requestNextPulse();
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
                final int at = Math.floorMod(moved, 2 * THERE_AND_BACK);
                final double share =
                        Math.min(at, 2 * THERE_AND_BACK - at) / (double) THERE_AND_BACK;
                fire(thumb, MouseEvent.MOUSE_DRAGGED, share * width - thumb.getLayoutX());
            }

            private void fire(final Node node, final EventType<MouseEvent> type, final double x) {
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
                                null));
            }

            private void shown(final long began, final long beganWall) {
                if (moved >= 0) {
                    busy[moved] = moving + since(began);
                    wall[moved] = movingWall + (System.nanoTime() - beganWall) / NANOS;
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
                        String.valueOf(
                                part instanceof CheckBox box
                                        ? box.getText()
                                        : part.getAccessibleText());
                System.out.printf(
                        "%-24s %-34s %s;  %s%n",
                        drag.figure().kind().id(), name, percentiles(busy), percentiles(wall));
            }
        }
    }

    private static double since(final long from) {
        return (THREADS.getCurrentThreadCpuTime() - from) / NANOS;
    }

    private static String percentiles(final double[] values) {
        Arrays.sort(values);
        return String.format(
                Locale.ROOT,
                "%5.1f %5.1f %5.1f %5.1f",
                values[MOVES / 2],
                values[MOVES * 95 / 100],
                values[MOVES * 99 / 100],
                values[MOVES - 1]);
    }
}
