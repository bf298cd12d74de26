package wireworthy.window.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.window.parts.DistributionDrawing;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Scrolling;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Danger;

/** What all circuits come to together; what could start a fire stands apart, before all else. */
final class WholeResults extends KeptBox implements Refreshing, KeepsRoom {
    private final VehicleModel model;
    private final VBox first = new KeptBox();
    private final TakenRoom room = new TakenRoom(first, any -> false, () -> {});
    private final Redrawn<Warned> cautions = new Redrawn<>(this::cautions);
    private final Redrawn<List<CheckedVehicle.Placed>> lesser = new Redrawn<>(this::grouped);
    private final Redrawn<Unsettled> unsettled = new Redrawn<>(this::unsettled);
    private final Redrawn<Differing> differing = new Redrawn<>(this::differing);
    private final Redrawn<Totals> totals = new Redrawn<>(WholeResults::totals);
    private final Redrawn<Distribution> drawing = new Redrawn<>(WholeResults::drawing);
    private final MainSection main = new MainSection();
    private final Redrawn<FaultTable> faults = new Redrawn<>(FaultTable::drawn);

    /** What there is to look out for, and whether all circuits could be worked. */
    private record Warned(List<CheckedVehicle.Placed> placed, boolean worked) {}

    /** What runs at once, A. */
    private record Totals(OptionalDouble all, OptionalDouble together) {}

    WholeResults(final VehicleModel model, final OnPaper paper) {
        this.model = model;
        managedProperty().bind(visibleProperty());
        getStyleClass().add(Styles.RESULTS);
        first.getChildren().setAll(cautions);
        first.visibleProperty().bind(visibleProperty());
        first.managedProperty().bind(visibleProperty());
        Scrolling.holdBelow(first);
        getChildren()
                .setAll(unsettled, differing, lesser, totals, drawing, mainPart(), faults, paper);
    }

    /** What belongs in sight before all else. */
    VBox first() {
        return first;
    }

    @Override
    public void giveBack() {
        room.giveBack();
    }

    private List<Node> differing(final Differing differing) {
        return differing.drawn(model);
    }

    private List<Node> unsettled(final Unsettled unsettled) {
        return unsettled.drawn(model);
    }

    private VBox mainPart() {
        final VBox part = new VBox(Texts.subtitle(CheckTexts.of("spot.main")), main);
        part.getStyleClass().add(Styles.TIGHT);
        return part;
    }

    private List<Node> cautions(final Warned warned) {
        final List<CheckedVehicle.Placed> placed = warned.placed();
        if (placed.isEmpty()) {
            return nothing(warned.worked());
        }
        return grouped(placed.stream().filter(it -> Cautioned.isGrave(it.caution())).toList());
    }

    private static List<Node> nothing(final boolean worked) {
        return List.of(
                worked
                        ? new Notice(Verdict.SOUND, CheckTexts.of("whole.nothing"))
                        : new Notice(Verdict.CAUTION, CheckTexts.of("whole.too-early")));
    }

    private List<Node> grouped(final List<CheckedVehicle.Placed> placed) {
        final Map<Danger, List<CheckedVehicle.Placed>> byDanger =
                placed.stream()
                        .collect(
                                Collectors.groupingBy(
                                        it -> it.caution().danger(),
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        return byDanger.entrySet().stream()
                .<Node>map(it -> cautions(it.getKey(), it.getValue()))
                .toList();
    }

    private Notice cautions(final Danger danger, final List<CheckedVehicle.Placed> placed) {
        final VBox words = new VBox(Texts.strong(Cautioned.words(danger)));
        words.getStyleClass().add(Styles.SAYING);
        placed.forEach(each -> words.getChildren().addAll(caution(each)));
        return new Notice(Cautioned.verdict(danger), Cautioned.sign(danger), words);
    }

    private List<Node> caution(final CheckedVehicle.Placed placed) {
        final boolean whole = placed.circuit() == CheckedVehicle.WHOLE;
        final Spot spot = whole ? Spot.Fixed.MAIN : new Spot.OfCircuit(placed.circuit());
        final Hyperlink where = new Hyperlink(whole ? CheckTexts.of("spot.main") : placed.name());
        where.getStyleClass().add(Styles.WHERE);
        where.setOnAction(event -> model.choose(spot));
        return List.of(where, Texts.paragraph(Texts.kept(placed.caution().text())));
    }

    private static List<Node> totals(final Totals totals) {
        return List.of(
                Texts.subtitle(CheckTexts.of("whole.totals")),
                Texts.paragraph(
                        totals.all().isEmpty()
                                ? CheckTexts.of("whole.currents.unknown")
                                : CheckTexts.of(
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

    private static List<Node> drawing(final Distribution distribution) {
        final DistributionDrawing drawing = distribution.drawing();
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(CheckTexts.of("whole.drawing")));
        parts.add(sideways(drawing, drawing.getAccessibleText()));
        return parts;
    }

    /** What is wider than the window where the text is large is moved under it. */
    static ScrollPane sideways(final Node wide, final String name) {
        final ScrollPane scroll = Pages.scroll(name, wide);
        scroll.setFitToWidth(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.AS_NEEDED);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(USE_PREF_SIZE);
        return scroll;
    }

    private void show(final CheckedVehicle checked) {
        final Unsettled open = Unsettled.of(checked);
        room.keep();
        cautions.show(
                new Warned(
                        checked.cautions(),
                        checked.totalCurrent().isPresent() && open.all().isEmpty()));
        unsettled.show(open);
        differing.show(Differing.of(checked));
        lesser.show(
                checked.cautions().stream()
                        .filter(it -> !Cautioned.isGrave(it.caution()))
                        .toList());
        totals.show(new Totals(checked.totalCurrent(), checked.simultaneousCurrent()));
        drawing.show(Distribution.of(checked));
        main.show(checked);
        faults.show(FaultTable.of(checked));
    }

    @Override
    public void refresh() {
        if (isVisible()) {
            model.checking().done().get().ifPresent(this::show);
        }
    }
}
