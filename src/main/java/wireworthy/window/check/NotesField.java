package wireworthy.window.check;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/** Free text of several lines, kept as typed. */
final class NotesField extends KeptBox implements Refreshing {
    private static final int LINES = 3;

    private final Entry entry;
    private final TextArea field = new TextArea();

    NotesField(final Entry entry) {
        this.entry = entry;
        field.setId(entry.path());
        field.setPromptText(entry.prompt());
        field.setAccessibleText(entry.spoken());
        field.setWrapText(true);
        field.setPrefRowCount(LINES);
        Longest.of(entry).holdFor(field);
        refresh();
        field.textProperty().subscribe(entry::type);
        field.focusedProperty().subscribe(this::focused);
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::tabLeads);
        getStyleClass().addAll(Styles.ENTRY, Styles.NOTES);
        getChildren().setAll(EntryField.label(entry, field), field);
    }

    /** On to the next field, as everywhere: with Ctrl, Tab leaves a field of several lines. */
    private void tabLeads(final KeyEvent key) {
        if (key.getCode() == KeyCode.TAB && !key.isControlDown()) {
            key.consume();
            field.fireEvent(
                    new KeyEvent(
                            KeyEvent.KEY_PRESSED,
                            key.getCharacter(),
                            key.getText(),
                            KeyCode.TAB,
                            key.isShiftDown(),
                            true,
                            key.isAltDown(),
                            key.isMetaDown()));
        }
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
