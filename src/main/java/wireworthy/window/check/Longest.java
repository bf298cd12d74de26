package wireworthy.window.check;

import javafx.scene.control.TextFormatter;
import javafx.scene.control.TextInputControl;
import wireworthy.vehicle.Vehicle;

/**
 * How long a text may be, so that the file it is kept in can be read again.
 *
 * @param characters the most of them
 */
record Longest(int characters) {
    /** Figures may be longer than names, notes longer than both. */
    static Longest of(final Entry entry) {
        if (entry.where().equals(EntryList.NOTES)) {
            return new Longest(Vehicle.LONGEST_NOTES);
        }
        return new Longest(
                entry.quantity().isPresent() ? Vehicle.LONGEST_TEXT : Vehicle.LONGEST_NAME);
    }

    /** What is typed or pasted past it is left out. */
    void holdFor(final TextInputControl field) {
        field.setTextFormatter(new TextFormatter<>(this::held));
    }

    private TextFormatter.Change held(final TextFormatter.Change change) {
        final int over = change.getControlNewText().length() - characters;
        if (over > 0 && change.isContentChange()) {
            final String text = change.getText();
            change.setText(text.substring(0, Math.max(0, text.length() - over)));
            final int end = change.getRangeStart() + change.getText().length();
            change.selectRange(end, end);
        }
        return change;
    }
}
