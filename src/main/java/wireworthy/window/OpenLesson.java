package wireworthy.window;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.scene.control.ScrollPane;
import javafx.util.Subscription;
import wireworthy.lessons.Lesson;

/** A lesson being read, from its opening until another takes its place. */
final class OpenLesson {
    private final LessonPage page;
    private final ScrollPane view;
    private final Deque<Lesson.Screen> waiting = new ArrayDeque<>();
    private Subscription watching = Subscription.EMPTY;
    private boolean open = true;

    OpenLesson(final LessonPage page, final ScrollPane view) {
        this.page = page;
        this.view = view;
    }

    /**
     * Adds screens, one with each frame, so that no frame waits for more than one.
     *
     * @param then done when all of them are laid out, if the lesson is still open
     */
    void add(final List<Lesson.Screen> screens, final Runnable then) {
        waiting.addAll(screens);
        addNext(then);
    }

    private void addNext(final Runnable then) {
        if (!open) {
            return;
        }
        if (waiting.isEmpty()) {
            then.run();
            return;
        }
        page.add(List.of(waiting.remove()));
        NextFrame.then(view, () -> addNext(then));
    }

    /** Brings a screen to the top; what is scrolled to from then on is told to the desk. */
    void watchFrom(final int screen, final LessonDesk desk, final Runnable endShown) {
        watching =
                new EndShown(view, page, endShown)
                        .watch()
                        .and(new ScreenAtTop(view, page, desk::atScreen).from(screen));
    }

    /** Ends all that goes on for it; the view outlives it and must not hold it. */
    void close() {
        open = false;
        watching.unsubscribe();
    }
}
