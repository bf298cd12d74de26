package wireworthy.window.check;

import java.util.List;
import javafx.scene.control.Button;
import wireworthy.vehicle.LoadEntry;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/** The form of one load of a circuit. */
final class LoadForm extends KeptBox implements Refreshing {
    /**
     * @param removed what is done once it has been taken away
     */
    LoadForm(final VehicleModel model, final int circuit, final int load, final Runnable removed) {
        final Disclosure more =
                new Disclosure(
                        CheckTexts.of("more-of-load"),
                        () ->
                                new EntryFields(
                                        entries(model, circuit, load, EntryList.MORE_OF_LOAD)));
        getStyleClass().addAll(Styles.TIGHT, Styles.LOAD_FORM);
        getChildren()
                .setAll(
                        EntryFields.wide(EntryList.loadName(model, circuit, load)),
                        new EntryFields(entries(model, circuit, load, EntryList.DRAW)));
        if (model.now().circuits().get(circuit).isNetwork()) {
            final NetworkEntries entries = new NetworkEntries(model, circuit);
            getChildren()
                    .addAll(
                            new PlaceChoice(entries.at(load), entries::places),
                            entries.atLoad(load));
        }
        getChildren().add(more);
        if (model.now().circuits().get(circuit).loads().size() > 1) {
            getChildren().add(remove(model, circuit, load, removed));
        }
    }

    private static List<Entry> entries(
            final VehicleModel model,
            final int circuit,
            final int load,
            final List<LoadEntry> wanted) {
        return wanted.stream().map(entry -> EntryList.ofLoad(model, circuit, load, entry)).toList();
    }

    private static Button remove(
            final VehicleModel model, final int circuit, final int load, final Runnable removed) {
        final String name = EntryList.loadName(model, circuit, load).text();
        final Button button =
                Buttons.plain(
                        CheckTexts.of("remove-load"),
                        () -> {
                            model.removeLoad(circuit, load);
                            removed.run();
                        });
        button.setAccessibleText(CheckTexts.of("remove-load.read", "name", name));
        button.getStyleClass().add(Styles.SMALL);
        return button;
    }

    @Override
    public void refresh() {
        Refresh.all(getChildren());
    }
}
