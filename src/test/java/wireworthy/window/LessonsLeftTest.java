package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.WeakHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.working.Solver;

/** Every lesson is read, its figures moved, and left for the next one: what stays of them. */
class LessonsLeftTest extends WindowTest {
    private static final Solver SOLVER = new Solver();
    private static final Lessons LESSONS = Lessons.read(SOLVER, Optional.empty());
    private static final int COLLECTIONS = 20;

    private final OnFirstVisit<LessonsPlace> lessons =
            new OnFirstVisit<>(
                    "lessons",
                    "Lessons",
                    () -> new LessonsPlace(() -> LESSONS, SOLVER, new TestDesk()));
    private final Set<ScrollPane> views = Collections.newSetFromMap(new WeakHashMap<>());
    private final List<WeakReference<Node>> nodes = new ArrayList<>();

    @Override
    protected List<Place> places() {
        return List.of(lessons);
    }

    @BeforeEach
    void readAllAndGoBackToTheFirst() throws TimeoutException {
        final List<String> ids = LESSONS.contents().stream().map(LessonHeading::id).toList();
        for (final String id : ids) {
            open(id);
            interact(() -> use(page()));
        }
        open(ids.get(0));
    }

    @Test
    void nothingOfALessonLeftIsHeld() {
        final List<WeakReference<Node>> left =
                nodes.stream().filter(node -> !isInWindow(node)).toList();
        assertThat(left).hasSizeGreaterThan(1000);
        for (int i = 0; i < COLLECTIONS && !held(left).isEmpty(); i++) {
            System.gc();
            WaitForAsyncUtils.waitForFxEvents();
        }
        assertThat(held(left).size()).isZero();
    }

    /** The toolkit keeps a picture of every view there was for as long as there is memory. */
    @Test
    void allLessonsAreShownInOneView() {
        assertThat(views).hasSize(1);
    }

    private void open(final String id) throws TimeoutException {
        interact(() -> lessons.place().open(id));
        final int screens = LESSONS.lesson(id).orElseThrow().screens().size();
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> shown() == screens);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** How many screens stand there; asked where they are put, between one and the next. */
    private int shown() throws ExecutionException, InterruptedException {
        return WaitForAsyncUtils.asyncFx(() -> page().screens().size()).get();
    }

    private LessonPage page() {
        return lookup(".lesson").query();
    }

    /** Moves and focuses what there is, in both themes and at another size. */
    private void use(final LessonPage page) {
        page.lookupAll(".slider").forEach(slider -> ((Slider) slider).increment());
        page.lookupAll(".slider").forEach(Node::requestFocus);
        window.otherTheme();
        window.otherTheme();
        remember(page);
        lookup(".page-scroll").<ScrollPane>queryAll().forEach(views::add);
    }

    private void remember(final Node node) {
        nodes.add(new WeakReference<>(node));
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::remember);
        }
    }

    private static boolean isInWindow(final WeakReference<Node> node) {
        final Node there = node.get();
        return there != null && there.getScene() != null;
    }

    private static List<Node> held(final List<WeakReference<Node>> nodes) {
        return nodes.stream().map(WeakReference::get).filter(it -> it != null).toList();
    }
}
