package wireworthy.window.check;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/** The form of one stretch of a cable. */
final class StretchForm extends KeptBox implements Refreshing {
    /**
     * @param removed what is done once it has been taken away
     */
    StretchForm(
            final VehicleModel model,
            final int circuit,
            final int stretch,
            final Runnable removed) {
        final NetworkEntries entries = new NetworkEntries(model, circuit);
        final EntryFields fields = new EntryFields(entries.of(stretch, NetworkEntries.STRETCH));
        final List<Node> ends =
                List.of(
                        new PlaceChoice(entries.from(stretch), entries::places),
                        new EntryField(entries.to(stretch)));
        fields.getChildren().addAll(0, ends);
        getStyleClass().addAll(Styles.TIGHT, Styles.LOAD_FORM);
        getChildren()
                .setAll(
                        fields,
                        entries.atStretch(stretch),
                        new Disclosure(
                                CheckTexts.of("more-of-stretch"),
                                () -> new EntryFields(entries.more(stretch))),
                        remove(model, circuit, stretch, removed));
    }

    private static Button remove(
            final VehicleModel model,
            final int circuit,
            final int stretch,
            final Runnable removed) {
        final Button button =
                Buttons.plain(
                        CheckTexts.of("remove-stretch"),
                        () -> {
                            model.removeStretch(circuit, stretch);
                            removed.run();
                        });
        button.setAccessibleText(CheckTexts.of("remove-stretch.read", "number", stretch + 1));
        button.getStyleClass().add(Styles.SMALL);
        return button;
    }

    @Override
    public void refresh() {
        Refresh.all(getChildren());
    }
}
