package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FuseFault;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** What all circuits come to together; while there are none, how to begin. */
final class WholePage extends VBox implements Refreshing {
    private final VehicleModel model;
    private final VBox begin = new VBox();
    private final Redrawn<List<CheckedVehicle.Placed>> cautions = new Redrawn<>(this::cautions);
    private final Redrawn<Totals> totals = new Redrawn<>(WholePage::totals);
    private final Redrawn<List<FuseFault>> faults = new Redrawn<>(this::faults);

    /** What runs at once. */
    private record Totals(OptionalDouble all, OptionalDouble together) {}

    WholePage(final VehicleModel model, final Node ways) {
        this.model = model;
        begin.getStyleClass().add(Styles.TIGHT);
        begin.getChildren().setAll(begin());
        begin.managedProperty().bind(begin.visibleProperty());
        getStyleClass().addAll(Styles.PAGE, Styles.WHOLE);
        getChildren()
                .setAll(
                        new EntryFields(List.of(EntryList.vehicleName(model))),
                        begin,
                        cautions,
                        totals,
                        faults,
                        ways,
                        Texts.soft(CheckTexts.of("mind")));
        refresh();
    }

    private List<Node> begin() {
        final Button first =
                Buttons.plain(CheckTexts.of("begin.supply"), () -> model.choose(Spot.SUPPLY));
        return List.of(
                Texts.title(CheckTexts.of("begin")),
                Texts.paragraph(CheckTexts.of("begin.what")),
                Buttons.row(
                        first,
                        Buttons.plain(CheckTexts.of("add-circuit"), model::addCircuit),
                        Buttons.plain(CheckTexts.of("begin.example"), model::openExample)));
    }

    private List<Node> cautions(final List<CheckedVehicle.Placed> placed) {
        final List<Node> parts = new ArrayList<>();
        if (!placed.isEmpty()) {
            parts.add(Texts.subtitle(CheckTexts.of("whole.cautions")));
        }
        placed.forEach(each -> parts.add(caution(each)));
        return parts;
    }

    private Node caution(final CheckedVehicle.Placed placed) {
        final boolean whole = placed.circuit() == CheckedVehicle.WHOLE;
        final Spot spot = whole ? Spot.MAIN : new Spot.OfCircuit(placed.circuit());
        final Hyperlink where = new Hyperlink(whole ? CheckTexts.of("spot.main") : placed.name());
        where.setOnAction(event -> model.choose(spot));
        final VBox words =
                new VBox(
                        where,
                        Texts.strong(Cautioned.words(placed.caution().danger())),
                        Texts.paragraph(placed.caution().text()));
        words.getStyleClass().add(Styles.SAYING);
        return new Notice(Cautioned.verdict(placed.caution().danger()), words);
    }

    private static List<Node> totals(final Totals totals) {
        return List.of(
                Texts.subtitle(CheckTexts.of("whole.totals")),
                Texts.paragraph(
                        CheckTexts.of(
                                "whole.currents",
                                "all",
                                amps(totals.all()),
                                "together",
                                amps(totals.together()))));
    }

    private static String amps(final OptionalDouble amps) {
        return amps.isEmpty()
                ? CheckTexts.of("not-yet")
                : Texts.kept(FigureText.of(amps.getAsDouble(), Dimension.CURRENT));
    }

    private List<Node> faults(final List<FuseFault> all) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(CheckTexts.of("whole.faults")));
        all.forEach(each -> parts.add(fault(each)));
        return parts;
    }

    private Node fault(final FuseFault fault) {
        final String name =
                fault.circuit() == CheckedVehicle.WHOLE
                        ? CheckTexts.of("spot.main")
                        : model.now().circuits().get(fault.circuit()).name();
        return Texts.paragraph(name + ": " + Texts.kept(fault.text()));
    }

    private void show(final CheckedVehicle checked) {
        cautions.show(checked.cautions());
        totals.show(new Totals(checked.totalCurrent(), checked.simultaneousCurrent()));
        faults.show(checked.faults());
    }

    @Override
    public void refresh() {
        final boolean empty = model.now().circuits().isEmpty();
        begin.setVisible(empty);
        if (!empty) {
            model.checked().get().ifPresent(this::show);
        }
        Refresh.all(getChildren());
    }
}
