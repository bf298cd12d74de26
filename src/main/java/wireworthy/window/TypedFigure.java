package wireworthy.window;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;

/** A figure while it is typed, and how it is understood. */
public final class TypedFigure {
    private final Quantity quantity;
    private final StringProperty text = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper understood = new ReadOnlyStringWrapper("");

    public TypedFigure(final Quantity quantity) {
        this.quantity = quantity;
        text.subscribe(now -> understood.set(understand(now)));
    }

    private String understand(final String now) {
        if (now.isBlank()) {
            return "";
        }
        final Reading reading = Figures.read(now, quantity.dimension(), false);
        if (reading instanceof Reading.Read read) {
            return PracticeTexts.of("read-as", "figure", read.text());
        }
        return reading instanceof Reading.Unclear unclear
                ? unclear.question()
                : ((Reading.Unreadable) reading).message();
    }

    /** What it is a figure of. */
    public Quantity quantity() {
        return quantity;
    }

    public StringProperty text() {
        return text;
    }

    /** How the text is understood, in words; empty while there is none. */
    public ReadOnlyStringProperty understood() {
        return understood.getReadOnlyProperty();
    }
}
