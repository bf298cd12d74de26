package wireworthy.window;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import wireworthy.window.parts.Styles;

/**
 * The places as terminals in a row; where the text is too large for one row, folded into a list.
 */
final class TerminalStrip extends HBox {
    private final Label name = new Label("Wireworthy");
    private final ToggleGroup group = new ToggleGroup();
    private final HBox terminals = new HBox();
    private final PlacesMenu folded;
    private final Node view;

    TerminalStrip(final List<Place> places, final Consumer<Place> use, final Node view) {
        this.view = view;
        folded = new PlacesMenu(places, this::select);
        getStyleClass().add(Styles.STRIP);
        name.getStyleClass().add(Styles.WORDMARK);
        name.setMinWidth(USE_PREF_SIZE);
        name.managedProperty().bind(name.visibleProperty());
        terminals.getStyleClass().add(Styles.TERMINALS);
        terminals
                .getChildren()
                .addAll(
                        IntStream.range(0, places.size())
                                .mapToObj(i -> terminal(places.get(i), i + 1))
                                .toList());
        terminals.visibleProperty().bind(folded.visibleProperty().not());
        terminals.managedProperty().bind(terminals.visibleProperty());
        folded.managedProperty().bind(folded.visibleProperty());
        folded.setVisible(false);
        group.selectedToggleProperty().addListener((property, before, now) -> tell(now, use));
        final Region gap = new Region();
        setHgrow(gap, Priority.ALWAYS);
        setHgrow(terminals, Priority.ALWAYS);
        gap.managedProperty().bind(folded.visibleProperty());
        getChildren().addAll(name, terminals, folded, gap, view);
    }

    /** Screws down the terminal of a place, as a press on it does. */
    void select(final Place place) {
        group.getToggles().stream()
                .filter(it -> it.getUserData() == place)
                .forEach(it -> it.setSelected(true));
    }

    /** No terminal is screwed down. */
    void release() {
        group.selectToggle(null);
    }

    private Terminal terminal(final Place place, final int number) {
        final Terminal terminal = new Terminal(place, number);
        terminal.setUserData(place);
        terminal.setToggleGroup(group);
        return terminal;
    }

    private void tell(final @Nullable Toggle now, final Consumer<Place> use) {
        if (now != null && now.getUserData() instanceof Place place) {
            folded.say(place.title());
            use.accept(place);
        } else {
            folded.sayNone();
        }
    }

    /** Here all have their sizes. Where room is short the name goes first. */
    @Override
    protected void layoutChildren() {
        final double withoutName = withoutName();
        name.setVisible(getWidth() >= withoutName + getSpacing() + name.prefWidth(-1));
        folded.setVisible(getWidth() < withoutName);
        super.layoutChildren();
    }

    /** What terminals and menu take side by side. */
    private double withoutName() {
        final double sides = snappedLeftInset() + snappedRightInset();
        return sides + terminals.prefWidth(-1) + getSpacing() + view.prefWidth(-1);
    }
}
