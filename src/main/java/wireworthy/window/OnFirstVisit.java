package wireworthy.window;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Parent;

/** A place made when it is first visited: the window opens sooner without the others. */
final class OnFirstVisit<P extends Place> implements Place {
    private final String id;
    private final String title;
    private final Supplier<P> maker;
    private Optional<P> made = Optional.empty();

    OnFirstVisit(final String id, final String title, final Supplier<P> maker) {
        this.id = id;
        this.title = title;
        this.maker = maker;
    }

    /** The place itself. */
    P place() {
        final P place = made.orElseGet(maker);
        made = Optional.of(place);
        return place;
    }

    /** Does something with the place where it has been visited. */
    void ifMade(final Consumer<P> action) {
        made.ifPresent(action);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public Parent build(final Shell shell) {
        return place().build(shell);
    }

    @Override
    public void shown() {
        place().shown();
    }

    @Override
    public void left() {
        place().left();
    }
}
