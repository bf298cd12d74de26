package wireworthy.window.check;

import java.util.stream.Collectors;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.window.parts.KeptBox;

/** What there is to say of a part of the form that is no field of its own. */
final class NoteLine extends KeptBox implements Refreshing {
    private final Under under = new Under();
    private final VehicleModel model;
    private final Spot spot;
    private final String where;

    /**
     * @param where path of the part
     */
    NoteLine(final VehicleModel model, final Spot spot, final String where) {
        this.model = model;
        this.spot = spot;
        this.where = where;
        getChildren().setAll(under);
        managedProperty().bind(under.textProperty().isNotEmpty());
        refresh();
    }

    @Override
    public void refresh() {
        final String text =
                model.checking().notes(spot).stream()
                        .filter(note -> note.where().equals(where))
                        .map(FieldNote::text)
                        .collect(Collectors.joining(" "));
        under.say(text, !text.isEmpty());
    }
}
