package wireworthy.window.check;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/**
 * The vehicle as a whole: what could start a fire first; while it has no circuits, how to begin.
 */
final class WholePage extends KeptBox implements Refreshing {
    private final VehicleModel model;
    private final VBox begin;
    private final WholeResults results;

    WholePage(
            final VehicleModel model,
            final OnPaper paper,
            final Runnable add,
            final Runnable fromSheet) {
        this.model = model;
        begin =
                tight(
                        Texts.title(CheckTexts.of("begin")),
                        Texts.paragraph(CheckTexts.of("begin.what")),
                        Buttons.row(
                                Buttons.plain(
                                        CheckTexts.of("begin.supply"),
                                        () -> model.choose(Spot.Fixed.SUPPLY)),
                                Buttons.plain(CheckTexts.of("add-circuit"), add),
                                Buttons.plain(CheckTexts.of("sheet.open"), fromSheet),
                                Buttons.plain(CheckTexts.of("begin.example"), model::openExample)));
        results = new WholeResults(model, paper);
        getStyleClass().addAll(Styles.PAGE, Styles.WHOLE);
        getChildren()
                .setAll(
                        begin,
                        results.first(),
                        EntryFields.wide(EntryList.vehicleName(model), EntryList.volts(model)),
                        new NotesField(EntryList.notes(model)),
                        results,
                        new Disclosure(
                                CheckTexts.of("stock"),
                                () -> EntryFields.wide(EntryList.stock(model))),
                        Texts.soft(CheckTexts.of("mind")));
        refresh();
    }

    private static VBox tight(final Node... parts) {
        final VBox box = new VBox(parts);
        box.getStyleClass().add(Styles.TIGHT);
        box.managedProperty().bind(box.visibleProperty());
        return box;
    }

    @Override
    public void refresh() {
        begin.setVisible(model.now().circuits().isEmpty());
        results.setVisible(!begin.isVisible());
        Refresh.all(getChildren());
    }
}
