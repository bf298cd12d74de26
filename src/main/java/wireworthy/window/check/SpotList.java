package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import wireworthy.vehicle.Vehicle;
import wireworthy.window.parts.SideList;

/** The list at the side: the whole, the supply, the main fuse, then every circuit. */
final class SpotList {
    private final VehicleModel model;
    private final SideList<Spot> list;
    private List<String> titles = List.of();
    private List<String> notes = List.of();

    SpotList(final VehicleModel model) {
        this.model = model;
        list = new SideList<>(CheckTexts.of("parts"), this::title, this::note, model::choose);
        model.vehicle().subscribe(this::fill);
        model.checking().done().subscribe(() -> refreshNotes());
        model.chosen().subscribe(this::select);
    }

    /** The list as a control. */
    SideList<Spot> list() {
        return list;
    }

    private void fill(final Vehicle vehicle) {
        final List<Spot> spots = Spot.all(vehicle).toList();
        if (!list.getItems().equals(spots)) {
            list.getItems().setAll(spots);
            notes = List.of();
            select(model.chosen().get());
        }
        refreshTitles();
    }

    /** Entries are made anew only where one of them says something else: that takes its time. */
    private void refreshTitles() {
        final List<String> now = list.getItems().stream().map(this::title).toList();
        if (!now.equals(titles)) {
            titles = now;
            list.refresh();
        }
    }

    private void refreshNotes() {
        final List<String> now = list.getItems().stream().map(this::note).toList();
        if (!now.equals(notes)) {
            notes = now;
            list.refresh();
        }
    }

    private void select(final Spot spot) {
        if (!list.chosen().equals(Optional.of(spot))) {
            list.choose(spot::equals);
        }
    }

    private String title(final Spot spot) {
        return spot.title(model.now());
    }

    private String note(final Spot spot) {
        return model.checking().state(spot).map(State::text).orElse("");
    }
}
