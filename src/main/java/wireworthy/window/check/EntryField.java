package wireworthy.window.check;

import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import wireworthy.window.parts.KeptLabel;
import wireworthy.window.parts.Styles;

/** An entry as it is typed: its label, the field, and what was understood. */
final class EntryField extends EntryBox implements Refreshing {
    private final Entry entry;
    private final TextField field;
    private final Under under;
    private Optional<Seen> seen = Optional.empty();

    /** What the field shows hangs on this alone. */
    private record Seen(String typed, boolean focused, Entry.Known known) {}

    EntryField(final Entry entry) {
        this(entry, new TextField(), new Under());
    }

    private EntryField(final Entry entry, final TextField field, final Under under) {
        super(label(entry, field), field, under);
        this.entry = entry;
        this.field = field;
        this.under = under;
        field.setId(entry.path());
        Longest.of(entry).holdFor(field);
        under.textProperty().subscribe(field::setAccessibleHelp);
        // A figure keeps the line, so that the form stays still while one types.
        under.managedProperty()
                .bind(
                        under.textProperty()
                                .isNotEmpty()
                                .or(new SimpleBooleanProperty(entry.quantity().isPresent())));
        refresh();
        field.textProperty().subscribe(entry::type);
        field.focusedProperty().subscribe(this::focused);
    }

    static Label label(final Entry entry, final Node field) {
        final Label label = new KeptLabel(entry.label());
        label.getStyleClass().add(Styles.ENTRY_LABEL);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.setLabelFor(field);
        return label;
    }

    private void focused(final boolean focused) {
        if (!focused) {
            entry.model().settled();
        }
        refresh();
    }

    /** Most fields of a form stay as they are at a key. */
    @Override
    public void refresh() {
        final Seen now = new Seen(field.getText(), field.isFocused(), entry.known());
        if (!seen.equals(Optional.of(now))) {
            seen = Optional.of(now);
            show();
        }
    }

    /**
     * While a figure is typed it is no trouble that it can't be read yet, and its unit is not put
     * behind it.
     */
    private void show() {
        final String typed = field.getText();
        if (!(field.isFocused() ? entry.kept(typed) : typed).equals(entry.text())) {
            field.setText(entry.text());
        }
        field.setPromptText(entry.prompt());
        field.setAccessibleText(entry.spoken());
        under.say(entry.under(), entry.troubled() && !field.isFocused());
    }
}
