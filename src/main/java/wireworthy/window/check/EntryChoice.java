package wireworthy.window.check;

import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import wireworthy.window.parts.Styles;

/** An entry that is one of a few names, or left to what is usual. */
final class EntryChoice extends EntryBox implements Refreshing {
    private final Entry entry;
    private final ComboBox<String> box;
    private final Under under;

    EntryChoice(final Entry entry) {
        this(entry, new ComboBox<>(), new Under());
    }

    private EntryChoice(final Entry entry, final ComboBox<String> box, final Under under) {
        super(EntryField.label(entry, box), box, under);
        this.entry = entry;
        this.box = box;
        this.under = under;
        box.setId(entry.path());
        box.setAccessibleText(entry.label());
        box.setConverter(new Shown());
        box.setMaxWidth(Double.MAX_VALUE);
        box.getItems().add("");
        box.getItems().addAll(entry.names());
        under.managedProperty().bind(under.textProperty().isNotEmpty());
        refresh();
        box.valueProperty().addListener((any, before, now) -> entry.type(now == null ? "" : now));
        getStyleClass().add(Styles.CHOICE);
    }

    @Override
    public void refresh() {
        if (!entry.text().equals(box.getValue())) {
            box.setValue(entry.text());
        }
        under.say(entry.under(), entry.troubled());
    }

    /** What is usual where nothing is chosen; a name that is not known stays as it was typed. */
    private final class Shown extends StringConverter<String> {
        @Override
        public String toString(final String name) {
            return name == null || name.isEmpty() ? entry.prompt() : entry.words(name);
        }

        @Override
        public String fromString(final String text) {
            return text;
        }
    }
}
