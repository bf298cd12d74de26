package wireworthy.window;

import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** Where the topic is chosen; it shows the one that is practised. */
final class TopicBox extends ComboBox<Optional<Trainer.Topic>> {
    TopicBox(final PracticeModel model) {
        setAccessibleText(PracticeTexts.of("topics"));
        getItems().add(Optional.empty());
        model.trainer().topics().forEach(topic -> getItems().add(Optional.of(topic)));
        setConverter(new TopicName());
        setMaxWidth(Double.MAX_VALUE);
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
