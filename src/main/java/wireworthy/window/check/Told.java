package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/**
 * Says a thing in lines, and says them anew only when it has changed. The lines stay in the window,
 * out of sight where they are not needed: while one types only their words change, and nothing is
 * made and dressed again at every key. The room once taken is kept, too, until one rests or the
 * keyboard goes elsewhere: nothing under it jumps, or is painted anew, while a figure is typed.
 *
 * @param <T> what is told; told apart by {@code equals}
 */
final class Told<T> extends KeptBox implements KeepsRoom {
    private final Function<T, List<Line>> telling;
    private final List<LineNode> lines = new ArrayList<>();
    private final TakenRoom room;
    private Optional<T> told = Optional.empty();

    Told(final Function<T, List<Line>> telling) {
        this.telling = telling;
        getStyleClass().add(Styles.TIGHT);
        setVisible(false);
        setManaged(false);
        room = new TakenRoom(this, this::isBeside, () -> setManaged(isVisible()));
    }

    void show(final T now) {
        if (!told.equals(Optional.of(now))) {
            told = Optional.of(now);
            final List<Line> said = telling.apply(now);
            room.keep();
            say(said);
            setVisible(!said.isEmpty());
            setManaged(isVisible() || room.isKept());
        }
    }

    @Override
    public void giveBack() {
        room.giveBack();
    }

    /** Among the results themselves all stays where one is about to go. */
    private boolean isBeside(final Node other) {
        final Optional<Parent> its = results(this);
        return its.isPresent() && its.equals(results(other));
    }

    private static Optional<Parent> results(final Node part) {
        return Stream.iterate(part.getParent(), Objects::nonNull, Parent::getParent)
                .filter(parent -> parent.getStyleClass().contains(Styles.RESULTS))
                .findFirst();
    }

    /** Each in the next place that looks like it; what is passed over goes out of sight. */
    private void say(final List<Line> said) {
        int next = 0;
        for (final Line line : said) {
            final int at = place(line, next);
            hide(next, at);
            lines.get(at).say(line);
            next = at + 1;
        }
        hide(next, lines.size());
    }

    /** Where a line can stand from a place on; it is made where there is none yet. */
    private int place(final Line line, final int from) {
        for (int i = from; i < lines.size(); i++) {
            if (lines.get(i).look().equals(line.look())) {
                return i;
            }
        }
        final LineNode made = LineNode.of(line);
        lines.add(from, made);
        getChildren().add(from, made.node());
        return from;
    }

    private void hide(final int from, final int to) {
        lines.subList(from, to).forEach(line -> line.show(false));
    }
}
