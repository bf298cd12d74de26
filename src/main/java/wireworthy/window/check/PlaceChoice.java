package wireworthy.window.check;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import wireworthy.working.CableNetwork;

/** An entry that is one of the places along a cable. */
final class PlaceChoice extends EntryBox implements Refreshing {
    private final Entry entry;
    private final Supplier<List<String>> places;
    private final ComboBox<String> box;
    private final Under under;
    private boolean refreshing;

    PlaceChoice(final Entry entry, final Supplier<List<String>> places) {
        this(entry, places, new ComboBox<>(), new Under());
    }

    private PlaceChoice(
            final Entry entry,
            final Supplier<List<String>> places,
            final ComboBox<String> box,
            final Under under) {
        super(EntryField.label(entry, box), box, under);
        this.entry = entry;
        this.box = box;
        this.under = under;
        this.places = places;
        box.setId(entry.path());
        box.setAccessibleText(entry.spoken());
        box.setConverter(new Shown());
        box.setMaxWidth(Double.MAX_VALUE);
        under.managedProperty().bind(under.textProperty().isNotEmpty());
        refresh();
        box.valueProperty().addListener((any, before, now) -> chosen(now == null ? "" : now));
    }

    private void chosen(final String place) {
        if (!refreshing) {
            entry.type(place);
        }
    }

    @Override
    public void refresh() {
        refreshing = true;
        // A place that is no longer there stays in sight until another is chosen.
        final List<String> choice =
                Stream.concat(places.get().stream(), Stream.of(entry.text())).distinct().toList();
        if (!box.getItems().equals(choice)) {
            box.getItems().setAll(choice);
        }
        if (!entry.text().equals(box.getValue())) {
            box.setValue(entry.text());
        }
        refreshing = false;
        under.say(entry.under(), entry.troubled());
    }

    /** The source under a name a builder would give it. */
    private final class Shown extends StringConverter<String> {
        @Override
        public String toString(final String place) {
            if (place == null || place.isEmpty()) {
                return entry.prompt();
            }
            return place.equals(CableNetwork.SOURCE) ? CheckTexts.of("place.source") : place;
        }

        @Override
        public String fromString(final String text) {
            return text;
        }
    }
}
