package wireworthy.window.check;

import java.util.List;
import java.util.Objects;
import wireworthy.vehicle.Vehicle;
import wireworthy.window.parts.SideList;

/** The list at the side: the whole, the supply, the main fuse, then every circuit. */
final class SpotList {
    private final VehicleModel model;
    private final SideList<Spot> list;

    SpotList(final VehicleModel model) {
        this.model = model;
        list = new SideList<>(CheckTexts.of("parts"), this::title, this::note, model::choose);
        model.vehicle().subscribe(this::fill);
        model.checking().done().subscribe(any -> list.refresh());
        model.chosen().subscribe(this::select);
    }

    /** The list as a control. */
    SideList<Spot> list() {
        return list;
    }

    private void fill(final Vehicle vehicle) {
        final List<Spot> spots = Spot.all(vehicle).toList();
        if (list.getItems().equals(spots)) {
            list.refresh();
        } else {
            list.getItems().setAll(spots);
            select(model.chosen().get());
        }
    }

    private void select(final Spot spot) {
        if (!Objects.equals(list.getSelectionModel().getSelectedItem(), spot)) {
            list.getSelectionModel().select(spot);
            list.showChosen();
        }
    }

    private String title(final Spot spot) {
        if (spot instanceof Spot.OfCircuit of) {
            return spot.isIn(model.now()) ? model.now().circuits().get(of.index()).name() : "";
        }
        return CheckTexts.of("spot." + (spot.equals(Spot.WHOLE) ? "whole" : key(spot)));
    }

    private static String key(final Spot spot) {
        return spot.equals(Spot.SUPPLY) ? "supply" : "main";
    }

    private String note(final Spot spot) {
        return model.checking().state(spot).map(State::text).orElse("");
    }
}
