package wireworthy.window.check;

import java.util.List;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedPart;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Scrolling;
import wireworthy.window.parts.Styles;
import wireworthy.working.Caution;

/**
 * How a part stands, in sight before its form: its state, what brings it about, what could start a
 * fire first, and which of the builder's figures are to be looked at.
 */
final class Standing extends KeptBox {
    private final Told<State> state = new Told<>(StateBadge::of);
    private final Told<List<Caution>> grave = new Told<>(Cautioned::all);
    private final Told<ToLookAt> figures = new Told<>(ToLookAt::told);

    Standing() {
        getStyleClass().add(Styles.STANDING);
        getChildren().setAll(state, grave, figures);
        managedProperty().bind(visibleProperty());
        setVisible(false);
        Scrolling.holdBelow(this);
    }

    void show(final CheckedCircuit circuit) {
        show(State.of(circuit), circuit.cautions(), ToLookAt.of(circuit.marks(), circuit.notes()));
    }

    void show(final CheckedPart part) {
        show(State.of(part), part.cautions(), ToLookAt.of(part.marks(), part.notes()));
    }

    private void show(final State now, final List<Caution> cautions, final ToLookAt looked) {
        state.show(now);
        grave.show(cautions.stream().filter(Cautioned::isGrave).toList());
        figures.show(looked);
        setVisible(true);
    }

    /** The cautions that it leaves to be said after it. */
    static List<Caution> others(final List<Caution> cautions) {
        return cautions.stream().filter(it -> !Cautioned.isGrave(it)).toList();
    }
}
