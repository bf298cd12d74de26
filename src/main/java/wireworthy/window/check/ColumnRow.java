package wireworthy.window.check;

import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import wireworthy.vehicle.sheet.Column;
import wireworthy.vehicle.sheet.Target;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A column of a spreadsheet: its heading, an example, what it is taken for and in which unit. */
final class ColumnRow extends VBox {
    private static final int MOST_ROWS = 14;

    private final ImportModel model;
    private final int index;
    private final ComboBox<Target> target;
    private final ComboBox<String> unit;
    private final Label understood = Texts.soft("");

    ColumnRow(final ImportModel model, final int index) {
        this.model = model;
        this.index = index;
        final String heading =
                column().heading().isBlank()
                        ? CheckTexts.of("sheet.column", "number", index + 1)
                        : column().heading();
        target = choice("sheet.taken-for", heading, Target::words, this::take);
        target.getItems().setAll(ImportModel.targets());
        unit = choice("sheet.unit", heading, Column::unitWords, this::takeUnit);
        unit.managedProperty().bind(unit.visibleProperty());
        understood.getStyleClass().add(Styles.SMALL);
        final FlowPane choices = Buttons.row(target, unit);
        getStyleClass().add(Styles.COLUMN_ROW);
        getChildren().setAll(name(heading), choices, understood);
        refresh();
    }

    private Label name(final String heading) {
        return Texts.paragraph(
                CheckTexts.of(
                        "sheet.heading", "heading", heading, "example", model.example(column())));
    }

    private static <T> ComboBox<T> choice(
            final String key,
            final String heading,
            final Function<T, String> words,
            final Consumer<T> taken) {
        final ComboBox<T> box = new ComboBox<>();
        box.setAccessibleText(CheckTexts.of(key, "heading", heading));
        box.setConverter(new Named<>(words));
        box.setVisibleRowCount(MOST_ROWS);
        box.setOnShown(event -> toChosen(box));
        box.valueProperty()
                .addListener(
                        (any, before, now) -> {
                            if (now != null) {
                                taken.accept(now);
                            }
                        });
        return box;
    }

    /** The list opens where the choice stands, not at its top. */
    private static void toChosen(final ComboBox<?> box) {
        if (box.getSkin() instanceof ComboBoxListViewSkin<?> skin
                && skin.getPopupContent() instanceof ListView<?> list) {
            list.scrollTo(Math.max(0, box.getSelectionModel().getSelectedIndex() - 1));
        }
    }

    private Column column() {
        return model.columns().get(index);
    }

    private void take(final Target now) {
        if (!column().target().equals(now)) {
            model.take(index, now);
        }
    }

    private void takeUnit(final String now) {
        if (!column().unit().equals(now) && column().units().contains(now)) {
            model.takeUnit(index, now);
        }
    }

    /** Shows what the column is taken for now. */
    void refresh() {
        final Column now = column();
        target.setValue(now.target());
        if (!unit.getItems().equals(now.units())) {
            unit.getItems().setAll(now.units());
        }
        unit.setVisible(!now.units().isEmpty());
        unit.setValue(now.unit());
        understood.setText(CheckTexts.of("sheet.understood", "text", now.text()));
    }

    /** The choice in words. */
    private static final class Named<T> extends StringConverter<T> {
        private final Function<T, String> words;

        Named(final Function<T, String> words) {
            this.words = words;
        }

        @Override
        public String toString(final T choice) {
            return choice == null ? "" : words.apply(choice);
        }

        @Override
        public T fromString(final String text) {
            throw new UnsupportedOperationException();
        }
    }
}
