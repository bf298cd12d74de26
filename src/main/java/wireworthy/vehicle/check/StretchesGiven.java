package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.Quantity;
import wireworthy.texts.TextBundle;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vocabulary;

/** The stretches of a cable as a question lists them; what is missing is noted at each. */
final class StretchesGiven {
    private static final TextBundle TEXTS = new TextBundle("network");
    private static final String WHERE = "given.network";

    private final Givens to;
    private boolean sound = true;

    private StretchesGiven(final Givens to) {
        this.to = to;
    }

    /** The stretches; empty where any of them is not known. */
    static Optional<ArrayNode> of(final Circuit circuit, final List<Tap> taps, final Givens to) {
        final StretchesGiven given = new StretchesGiven(to);
        final ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (int i = 0; i < circuit.stretches().size(); i++) {
            final String where = WHERE + ".stretches[" + i + "].";
            list.add(given.stretch(where, circuit.stretches().get(i)));
        }
        for (int i = 0; i < circuit.loads().size(); i++) {
            final String at = circuit.loads().get(i).at();
            given.needed(WHERE + ".loads[" + i + "].at", !at.isBlank(), "missing.at");
        }
        given.taps(taps);
        return given.sound ? Optional.of(list) : Optional.empty();
    }

    private ObjectNode stretch(final String where, final Stretch stretch) {
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("from", stretch.from());
        json.put("to", stretch.to());
        needed(where + "from", !stretch.from().isBlank(), "missing.from");
        needed(where + "to", !stretch.to().isBlank(), "missing.to");
        if (!stretch.given().has(LOOP_RESISTANCE)) {
            cable(where, stretch);
        }
        for (final Quantity each : Vocabulary.STRETCH) {
            typed(where, json, each, stretch.given().text(each));
        }
        return json;
    }

    private void cable(final String where, final Stretch stretch) {
        needed(where + ONE_WAY_LENGTH.id(), stretch.given().has(ONE_WAY_LENGTH), "missing.length");
        final boolean cable =
                stretch.given().has(SECTION) || stretch.given().has(RESISTANCE_PER_LENGTH);
        needed(where + SECTION.id(), cable, "missing.section");
    }

    private void typed(
            final String where, final ObjectNode json, final Quantity quantity, final String text) {
        if (Understood.of(quantity, text) instanceof Understood.Trouble trouble) {
            to.note(FieldNote.wrong(where + quantity.id(), trouble.text()));
            sound = false;
        } else if (!text.isBlank()) {
            json.put(quantity.id(), text);
        }
    }

    private void needed(final String where, final boolean there, final String key) {
        if (!there) {
            to.note(FieldNote.missing(where, TEXTS.of(key)));
            sound = false;
        }
    }

    /** A sum without them would be too low, and so would the fuse. */
    private void taps(final List<Tap> taps) {
        if (!taps.isEmpty()) {
            final String names = taps.stream().map(Tap::name).collect(Collectors.joining(", "));
            to.note(FieldNote.wrong(WHERE, TEXTS.of("tapped", "names", names)));
            sound = false;
        }
    }
}
