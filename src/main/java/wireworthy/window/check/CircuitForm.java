package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The form of one circuit: what everyone needs first, the rest behind a line that opens. */
final class CircuitForm extends KeptBox implements Refreshing {
    private final VehicleModel model;
    private final int index;
    private final VBox loads = new KeptBox();
    private final VBox cable = new KeptBox();
    private final EntryList entries;
    private final Button addLoad = Buttons.plain(CheckTexts.of("add-load"), this::addLoad);
    private final Disclosure places;

    /** What the form is made for, and has to be made anew for. */
    private Optional<Made> made = Optional.empty();

    private record Made(boolean network, int loads) {}

    CircuitForm(final VehicleModel model, final int index) {
        this.model = model;
        this.index = index;
        entries = EntryList.circuit(model, index);
        places = new Disclosure(CheckTexts.of("several"), () -> new NetworkForm(model, index));
        loads.getStyleClass().add(Styles.TIGHT);
        cable.getStyleClass().add(Styles.TIGHT);
        getStyleClass().add(Styles.FORM);
        getChildren()
                .setAll(
                        EntryFields.wide(EntryList.name(model, index)),
                        volts(),
                        Texts.subtitle(CheckTexts.of("loads")),
                        loads,
                        note("given.loads"),
                        Buttons.row(addLoad),
                        Texts.subtitle(CheckTexts.of("cable")),
                        cable,
                        note("given"),
                        places,
                        new Disclosure(CheckTexts.of("connected"), this::connected),
                        EntryFields.wide(EntryList.notes(model, index)),
                        Buttons.row(
                                Buttons.plain(
                                        CheckTexts.of("remove-circuit"),
                                        () -> model.removeCircuit(index))));
        refresh();
    }

    /** Asked here, too, where it was not given before. */
    private Node volts() {
        final EntryFields volts = EntryFields.wide(EntryList.volts(model));
        volts.setManaged(!model.now().supply().given().has(Quantity.SUPPLY_VOLTAGE));
        volts.setVisible(volts.isManaged());
        return volts;
    }

    private NoteLine note(final String where) {
        return new NoteLine(model, new Spot.OfCircuit(index), where);
    }

    private Node connected() {
        final VBox connected =
                new VBox(
                        new FeedForm(model, index),
                        new EntryFields(
                                List.of(
                                        EntryList.colour(model, index),
                                        EntryList.neverWith(model, index))));
        connected.getStyleClass().add(Styles.TIGHT);
        return connected;
    }

    private void addLoad() {
        model.addLoad(index);
        final int last = loads.getChildren().size() - 1;
        focusField(loads.getChildren().get(last));
    }

    /** The button pressed is gone; the keyboard goes on from the next one. */
    private void removed() {
        addLoad.requestFocus();
    }

    /** Puts the keyboard into the first field. */
    void focus() {
        focusField(this);
    }

    private static void focusField(final Node form) {
        form.lookupAll(".text-field").stream().findFirst().ifPresent(Node::requestFocus);
    }

    private Circuit circuit() {
        return model.now().circuits().get(index);
    }

    @Override
    public void refresh() {
        final Made now = new Made(circuit().isNetwork(), circuit().loads().size());
        if (!made.equals(Optional.of(now))) {
            loads.getChildren()
                    .setAll(
                            IntStream.range(0, now.loads())
                                    .mapToObj(
                                            load -> new LoadForm(model, index, load, this::removed))
                                    .toList());
            if (made.isEmpty() || made.get().network() != now.network()) {
                cable(now.network());
            }
            made = Optional.of(now);
        }
        Refresh.all(getChildren());
    }

    /** Where the cable is told stretch by stretch, it has no length of its own. */
    private void cable(final boolean network) {
        cable.getChildren()
                .setAll(
                        new EntryFields(
                                entries.given(network ? NetworkEntries.FUSED : EntryList.CABLE)),
                        new Disclosure(
                                CheckTexts.of("more-of-cable"),
                                () ->
                                        new EntryFields(
                                                network
                                                        ? NetworkEntries.moreOfCable(entries)
                                                        : entries.moreOfCable())));
        if (network) {
            places.open();
        }
    }
}
