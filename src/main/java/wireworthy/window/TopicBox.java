package wireworthy.window;

import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** Where the topic is chosen; it shows the one that is practised. */
final class TopicBox extends ComboBox<Optional<Trainer.Topic>> {
    /** Room for the arrow and the margins of the box, in text sizes. */
    private static final double ARROW = 4;

    TopicBox(final PracticeModel model) {
        setAccessibleText(PracticeTexts.of("topics"));
        getItems().add(Optional.empty());
        model.trainer().topics().forEach(topic -> getItems().add(Optional.of(topic)));
        setConverter(new TopicName());
        setCellFactory(list -> new TopicCell());
        setButtonCell(new TopicCell());
        setMinWidth(0);
        setPrefWidth(0);
        setMaxWidth(Double.MAX_VALUE);
        widthProperty().subscribe(any -> requestLayout());
        model.topic().subscribe(this::tell);
        valueProperty().addListener((any, old, now) -> choose(model, id(now)));
    }

    private void tell(final Optional<String> topic) {
        getItems().stream()
                .filter(item -> id(item).equals(topic))
                .findFirst()
                .ifPresent(this::setValue);
    }

    private static void choose(final PracticeModel model, final Optional<String> topic) {
        if (!topic.equals(model.topic().get())) {
            model.choose(topic);
        }
    }

    private static Optional<String> id(final Optional<Trainer.Topic> topic) {
        return topic.map(Trainer.Topic::id);
    }

    /** A name on as many lines as it needs. */
    private final class TopicCell extends ListCell<Optional<Trainer.Topic>> {
        TopicCell() {
            setWrapText(true);
            setPrefWidth(0);
        }

        /** An empty cell has no item at all. */
        @Override
        @SuppressWarnings("NullableOptional")
        protected void updateItem(
                final @Nullable Optional<Trainer.Topic> topic, final boolean empty) {
            super.updateItem(topic, empty);
            setText(empty || topic == null ? "" : getConverter().toString(topic));
        }

        /** The box asks for the height without saying how much room there is. */
        @Override
        protected double computePrefHeight(final double width) {
            final double room = TopicBox.this.getWidth() - ARROW * getFont().getSize();
            return super.computePrefHeight(width < 0 && room > 0 ? room : width);
        }
    }

    private static final class TopicName extends StringConverter<Optional<Trainer.Topic>> {
        @Override
        public String toString(final Optional<Trainer.Topic> topic) {
            return topic.map(Trainer.Topic::title).orElse(PracticeTexts.of("all-topics"));
        }

        @Override
        public Optional<Trainer.Topic> fromString(final String text) {
            return Optional.empty();
        }
    }
}
