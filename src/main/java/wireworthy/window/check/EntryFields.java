package wireworthy.window.check;

import java.util.List;
import javafx.scene.Node;
import wireworthy.window.parts.KeptFlow;
import wireworthy.window.parts.Styles;

/** Entries side by side, as many as the room allows. */
final class EntryFields extends KeptFlow implements Refreshing {
    EntryFields(final List<Entry> entries) {
        getStyleClass().add(Styles.ENTRY_FIELDS);
        getChildren().setAll(entries.stream().map(EntryFields::field).toList());
    }

    /** Entries that take more room than a figure: a name. */
    static EntryFields wide(final Entry... entries) {
        final EntryFields fields = new EntryFields(List.of(entries));
        fields.getStyleClass().add(Styles.WIDE);
        return fields;
    }

    /** The control that fits an entry. */
    static Node field(final Entry entry) {
        return entry.names().isEmpty() ? new EntryField(entry) : new EntryChoice(entry);
    }

    @Override
    public void refresh() {
        Refresh.all(getChildren());
    }
}
