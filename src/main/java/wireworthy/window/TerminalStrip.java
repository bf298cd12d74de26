package wireworthy.window;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;
import wireworthy.window.parts.Styles;

/** The places as terminals in a row. When the text is too large for one row, it takes two. */
final class TerminalStrip extends HBox {
    /** Under this width, in text sizes of the name, the name makes room for the terminals. */
    private static final double ROOM_FOR_NAME = 44;

    private final Label name = new Label("Wireworthy");
    private final ToggleGroup group = new ToggleGroup();
    private final FlowPane terminals = new FlowPane();

    TerminalStrip(final List<Place> places, final Consumer<Place> use, final Node view) {
        getStyleClass().add(Styles.STRIP);
        name.getStyleClass().add(Styles.WORDMARK);
        name.setMinWidth(USE_PREF_SIZE);
        name.managedProperty().bind(name.visibleProperty());
        widthProperty().addListener(change -> makeRoom());
        name.fontProperty().addListener(change -> makeRoom());
        terminals.getStyleClass().add(Styles.TERMINALS);
        terminals
                .getChildren()
                .addAll(
                        IntStream.range(0, places.size())
                                .mapToObj(i -> terminal(places.get(i), i + 1))
                                .toList());
        group.selectedToggleProperty().addListener((property, before, now) -> tell(now, use));
        HBox.setHgrow(terminals, Priority.ALWAYS);
        getChildren().addAll(name, terminals, view);
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

    private static void tell(final @Nullable Toggle now, final Consumer<Place> use) {
        if (now != null && now.getUserData() instanceof Place place) {
            use.accept(place);
        }
    }

    private void makeRoom() {
        name.setVisible(getWidth() >= ROOM_FOR_NAME * name.getFont().getSize());
    }
}
