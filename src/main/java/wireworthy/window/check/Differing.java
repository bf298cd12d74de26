package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import wireworthy.marking.Mark;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedPart;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/**
 * The builder's own figures that are not sound, and figures whose unit is doubtful, of all parts.
 *
 * @param all in the order of the parts
 */
record Differing(List<One> all) {
    /**
     * One of them.
     *
     * @param name of the part
     * @param text why
     */
    record One(Spot spot, String name, String text) {}

    static Differing of(final CheckedVehicle checked) {
        final List<One> all = new ArrayList<>();
        part(Spot.Fixed.SUPPLY, "spot.supply", checked.supply()).forEach(all::add);
        part(Spot.Fixed.MAIN, "spot.main", checked.main()).forEach(all::add);
        for (int i = 0; i < checked.circuits().size(); i++) {
            circuit(i, checked.circuits().get(i)).forEach(all::add);
        }
        return new Differing(List.copyOf(all));
    }

    /** What only follows from an earlier figure is said beside it: it is no mistake of its own. */
    static boolean isOne(final Mark mark) {
        return !mark.isSound() && !mark.follows();
    }

    private static Stream<One> part(final Spot spot, final String key, final CheckedPart part) {
        return part.marks().stream()
                .filter(Differing::isOne)
                .map(mark -> new One(spot, CheckTexts.of(key), mark.explanation()));
    }

    private static Stream<One> circuit(final int index, final CheckedCircuit circuit) {
        final Spot spot = new Spot.OfCircuit(index);
        final String name = circuit.circuit().name();
        return Stream.concat(
                circuit.notes().stream()
                        .filter(note -> note.kind() == FieldNote.Kind.DOUBT)
                        .map(note -> new One(spot, name, note.text())),
                circuit.marks().stream()
                        .filter(Differing::isOne)
                        .map(
                                mark ->
                                        new One(
                                                spot,
                                                CheckTexts.of(
                                                        "differs.where",
                                                        "name",
                                                        name,
                                                        "quantity",
                                                        mark.ref().quantity().words()),
                                                mark.explanation())));
    }

    /** How they are shown: each with a way to its part. */
    List<Node> drawn(final VehicleModel model) {
        return drawn(model, State.DIFFERS, "differs", all);
    }

    /**
     * Under a heading, with the sign of the state they stand for; nothing where there is nothing to
     * say.
     */
    static List<Node> drawn(
            final VehicleModel model,
            final State state,
            final String heading,
            final List<One> all) {
        if (all.isEmpty()) {
            return List.of();
        }
        final VBox words = new VBox(Texts.strong(CheckTexts.of(heading)));
        words.getStyleClass().add(Styles.SAYING);
        for (final One each : all) {
            final Hyperlink where = new Hyperlink(each.name());
            where.getStyleClass().add(Styles.WHERE);
            where.setOnAction(event -> model.choose(each.spot()));
            words.getChildren().addAll(where, Texts.paragraph(Texts.kept(each.text())));
        }
        return List.of(new Notice(state.verdict(), state.icon(), words));
    }
}
