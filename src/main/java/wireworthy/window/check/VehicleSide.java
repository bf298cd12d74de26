package wireworthy.window.check;

import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.SideList;
import wireworthy.window.parts.Styles;

/** The side of the place: the vehicle's file, the list of its parts, and where it is kept. */
final class VehicleSide extends VBox {
    private final SideList<Spot> list;

    VehicleSide(final VehicleModel model, final VehicleMenu menu, final Runnable add) {
        list = new SpotList(model).list();
        VBox.setVgrow(list, Priority.ALWAYS);
        getStyleClass().addAll(Styles.SIDE, Styles.VEHICLE_SIDE);
        getChildren()
                .setAll(menu, list, Buttons.plain(CheckTexts.of("add-circuit"), add), said(model));
    }

    /** In one place and one room, so that a message does not move what stands above it. */
    private static VBox said(final VehicleModel model) {
        final Label told = told(model);
        final Label kept = kept(model.keeper());
        kept.visibleProperty().bind(told.managedProperty().not());
        kept.managedProperty().bind(kept.visibleProperty());
        final VBox said = new VBox(trouble(model), told, kept);
        said.getStyleClass().add(Styles.VEHICLE_SAID);
        return said;
    }

    /** Puts the keyboard on the list. */
    void focus() {
        list.requestFocus();
    }

    private static Label kept(final Keeper keeper) {
        final Under kept = new Under();
        keeper.said().subscribe(said -> kept.say(said.text(), said.trouble()));
        return kept;
    }

    private static Label told(final VehicleModel model) {
        final Under told = new Under();
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        model.told().subscribe(text -> told.say(text, false));
        return told;
    }

    private static Label trouble(final VehicleModel model) {
        final Under trouble = new Under();
        trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
        model.trouble().subscribe(text -> trouble.say(text, !text.isEmpty()));
        return trouble;
    }
}
