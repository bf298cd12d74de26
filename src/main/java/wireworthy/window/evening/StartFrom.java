package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import wireworthy.evening.course.Evening;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** The evenings to start from, and what of them can't be read. */
final class StartFrom extends VBox {
    StartFrom(final MakeModel model) {
        final ComboBox<Optional<Evening>> box = new ComboBox<>();
        final List<Optional<Evening>> all = new ArrayList<>();
        all.add(Optional.empty());
        model.evenings().evenings().forEach(each -> all.add(Optional.of(each)));
        box.setConverter(new Name());
        box.getItems().setAll(all);
        box.setValue(model.evening().get());
        box.setAccessibleText(EveningTexts.of("make.start"));
        box.setMaxWidth(Double.MAX_VALUE);
        box.setOnAction(event -> model.use(box.getValue()));
        getStyleClass().add(Styles.ONE_OF);
        getChildren().setAll(Texts.strong(EveningTexts.of("make.start")), box);
        model.evenings()
                .troubles()
                .forEach(each -> getChildren().add(new Notice(Verdict.CAUTION, each)));
    }

    private static final class Name extends StringConverter<Optional<Evening>> {
        @Override
        public String toString(final Optional<Evening> evening) {
            return evening == null
                    ? ""
                    : evening.map(Evening::title).orElseGet(() -> EveningTexts.of("make.own"));
        }

        @Override
        public Optional<Evening> fromString(final String text) {
            return Optional.empty();
        }
    }
}
