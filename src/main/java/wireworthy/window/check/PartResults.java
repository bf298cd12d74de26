package wireworthy.window.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.check.CheckedPart;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Caution;

/** What comes out for the supply, or for the main fuse with its cable. */
final class PartResults extends KeptBox implements Refreshing {
    private static final List<Quantity> OF_SUPPLY =
            List.of(
                    BANK_CAPACITY,
                    BANK_ENERGY,
                    USABLE_ENERGY,
                    DAILY_ENERGY,
                    RUNTIME,
                    CAPACITY_NEEDED,
                    CHARGE_TIME,
                    ARRAY_POWER);
    private static final List<Quantity> OF_MAIN =
            List.of(
                    FUSE_FLOOR,
                    FUSE_CEILING,
                    MAIN_FUSE,
                    AMPACITY,
                    DROP,
                    DROP_PERCENT,
                    STANDARD_SECTION);

    private final VehicleModel model;
    private final Spot spot;
    private final Standing standing = new Standing();
    private final Told<List<Caution>> cautions = new Told<>(Cautioned::all);
    private final Told<List<String>> energy = new Told<>(PartResults::notices);
    private final MainSection main = new MainSection();

    private PartResults(
            final VehicleModel model,
            final Spot spot,
            final EntryList entries,
            final List<Quantity> quantities) {
        this.model = model;
        this.spot = spot;
        getStyleClass().add(Styles.RESULTS);
        main.setManaged(spot.equals(Spot.Fixed.MAIN));
        getChildren()
                .setAll(
                        standing,
                        cautions,
                        energy,
                        main,
                        Texts.subtitle(CheckTexts.of("sums")),
                        Texts.soft(CheckTexts.of("sums.what")),
                        new OwnFigures(
                                entries,
                                quantities,
                                it -> model.checking().part(spot).flatMap(part -> part.found(it))),
                        new WorkingSection(this::workings),
                        Texts.soft(CheckTexts.of("mind.battery")));
        refresh();
    }

    static PartResults supply(final VehicleModel model) {
        return new PartResults(model, Spot.Fixed.SUPPLY, EntryList.supply(model), OF_SUPPLY);
    }

    static PartResults main(final VehicleModel model) {
        return new PartResults(model, Spot.Fixed.MAIN, EntryList.main(model), OF_MAIN);
    }

    /** What belongs in sight before all else. */
    Standing standing() {
        return standing;
    }

    private Workings workings() {
        return model.checking()
                .part(spot)
                .map(it -> new Workings(it.working(), it.assumed()))
                .orElse(Workings.NONE);
    }

    private static List<Line> notices(final List<String> texts) {
        return texts.stream().map(text -> Line.notice(Verdict.CAUTION, text)).toList();
    }

    private void show(final CheckedPart part) {
        standing.show(part);
        cautions.show(Standing.others(part.cautions()));
        energy.show(part.ofEnergy());
        if (spot.equals(Spot.Fixed.MAIN)) {
            model.checking().done().get().ifPresent(main::show);
        }
    }

    @Override
    public void refresh() {
        model.checking().part(spot).ifPresent(this::show);
        Refresh.all(getChildren());
    }
}
