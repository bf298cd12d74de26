package wireworthy.window.check;

import javafx.scene.control.TextArea;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Styles;

/** Free text of several lines, kept as typed. */
final class NotesField extends VBox implements Refreshing {
    private static final int LINES = 3;

    private final Entry entry;
    private final TextArea field = new TextArea();

    NotesField(final Entry entry) {
        this.entry = entry;
        field.setId(entry.spot().path() + entry.where());
        field.setPromptText(entry.prompt());
        field.setAccessibleText(entry.spoken());
        field.setWrapText(true);
        field.setPrefRowCount(LINES);
        Longest.of(entry).holdFor(field);
        refresh();
        field.textProperty().subscribe(entry::type);
        field.focusedProperty().subscribe(this::focused);
        getStyleClass().addAll(Styles.ENTRY, Styles.NOTES);
        getChildren().setAll(EntryField.label(entry, field), field);
    }

    private void focused(final boolean focused) {
        if (!focused) {
            entry.model().settled();
        }
    }

    @Override
    public void refresh() {
        if (!field.getText().equals(entry.text())) {
            field.setText(entry.text());
        }
    }
}
