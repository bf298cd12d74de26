package wireworthy.window.check;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Feed;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/** Where a circuit is fed from: the fuse board, or the cable of another circuit. */
final class FeedForm extends KeptBox implements Refreshing {
    private final VehicleModel model;
    private final int index;
    private final ComboBox<String> from = new ComboBox<>();
    private final CheckBox ownFuse = new CheckBox(CheckTexts.of("own-fuse"));

    FeedForm(final VehicleModel model, final int index) {
        this.model = model;
        this.index = index;
        final Label label = new Label(CheckTexts.of("fed-from"));
        label.getStyleClass().add(Styles.ENTRY_LABEL);
        label.setLabelFor(from);
        from.setAccessibleText(label.getText());
        from.setConverter(new Shown());
        from.setMaxWidth(Double.MAX_VALUE);
        ownFuse.setWrapText(true);
        ownFuse.managedProperty().bind(ownFuse.visibleProperty());
        refresh();
        from.valueProperty().addListener((any, before, now) -> feed(now == null ? "" : now));
        ownFuse.selectedProperty().addListener((any, before, now) -> fused(now));
        getStyleClass().add(Styles.TIGHT);
        final VBox choice = new KeptBox(label, from);
        choice.getStyleClass().addAll(Styles.ENTRY, Styles.CHOICE);
        choice.setMaxWidth(USE_PREF_SIZE);
        getChildren().setAll(choice, ownFuse);
    }

    private Circuit circuit() {
        return model.now().circuits().get(index);
    }

    private List<String> feeders() {
        return Stream.concat(
                        Stream.of(""),
                        model.now().circuits().stream()
                                .filter(it -> !it.equals(circuit()))
                                .map(Circuit::name))
                .distinct()
                .toList();
    }

    private void feed(final String name) {
        if (!name.equals(circuit().feed().circuit())) {
            change(name.isEmpty() ? Feed.BOARD : new Feed(name, false));
        }
    }

    private void fused(final boolean own) {
        final Feed now = circuit().feed();
        if (now.isTap() && now.ownFuse() != own) {
            change(new Feed(now.circuit(), own));
        }
    }

    private void change(final Feed feed) {
        model.change("", it -> it.withCircuit(index, it.circuits().get(index).fedFrom(feed)));
    }

    @Override
    public void refresh() {
        final Feed feed = circuit().feed();
        if (!from.getItems().equals(feeders())) {
            from.getItems().setAll(feeders());
        }
        if (!feed.circuit().equals(from.getValue())) {
            from.setValue(feed.circuit());
        }
        ownFuse.setVisible(feed.isTap());
        ownFuse.setSelected(feed.ownFuse());
    }

    /** The board where no circuit is named. */
    private static final class Shown extends StringConverter<String> {
        @Override
        public String toString(final String name) {
            return name == null || name.isEmpty() ? CheckTexts.of("fed-from.board") : name;
        }

        @Override
        public String fromString(final String text) {
            return text;
        }
    }
}
