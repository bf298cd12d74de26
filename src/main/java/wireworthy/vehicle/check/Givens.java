package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Understood;

/** The givens of a question, gathered from what was typed; what can't be read is noted. */
final class Givens {
    /** Where one of these can't be read, working on would quietly take the usual value for it. */
    private static final Set<Quantity> USUAL =
            Set.of(
                    CABLE_TABLE,
                    INSULATION_TEMPERATURE,
                    AMBIENT_TEMPERATURE,
                    ENGINE_SPACE,
                    BUNDLED,
                    IN_THERMAL_INSULATION,
                    RETURN,
                    FUSE_SERIES,
                    FUSE_VOLTAGE,
                    BREAKING_CAPACITY,
                    MARGIN,
                    DROP_LIMIT,
                    AVAILABLE_SECTIONS,
                    CONDUCTOR_METAL,
                    RESISTIVITY,
                    CONDUCTOR_TEMPERATURE,
                    IN_SERIES,
                    IN_PARALLEL,
                    USABLE_SHARE,
                    DAYS_OF_RESERVE);

    private static final int EXACT = 12;

    private final ObjectNode json = JsonNodeFactory.instance.objectNode();
    private final List<FieldNote> notes = new ArrayList<>();
    private boolean blocked;

    ObjectNode json() {
        return json;
    }

    List<FieldNote> notes() {
        return notes;
    }

    /** Whether nothing may be worked until a note is seen to. */
    boolean blocked() {
        return blocked;
    }

    void note(final FieldNote note) {
        notes.add(note);
    }

    /** Takes over all that was typed. */
    Givens all(final Entries<Quantity> entries) {
        entries.typed().forEach(this::typed);
        return this;
    }

    /** Takes over what was typed for some quantities. */
    Givens of(final Entries<Quantity> entries, final List<Quantity> wanted) {
        wanted.stream().filter(entries::has).forEach(each -> typed(each, entries.text(each)));
        return this;
    }

    /** Takes over what was typed, under the name of its quantity. */
    void typed(final Quantity quantity, final String text) {
        typed("given." + quantity.id(), quantity, text);
    }

    private void typed(final String where, final Quantity quantity, final String text) {
        final Understood understood = Understood.of(quantity, text);
        if (understood instanceof Understood.Trouble trouble) {
            notes.add(FieldNote.wrong(where, trouble.text()));
            blocked |= USUAL.contains(quantity);
        } else if (understood instanceof Understood.Sections sections) {
            sections.each().forEach(json.putArray(quantity.id())::add);
        } else {
            json.put(quantity.id(), text);
        }
    }

    /** Takes over what was typed for one quantity as another: a main fuse is a fuse. */
    void typedAs(final Quantity as, final Quantity quantity, final String text) {
        if (Understood.of(quantity, text) instanceof Understood.Trouble trouble) {
            notes.add(FieldNote.wrong("given." + quantity.id(), trouble.text()));
        } else if (!text.isBlank()) {
            json.put(as.id(), text);
        }
    }

    /** Takes over the voltage of the supply; nothing where it is not known. */
    void volts(final String text) {
        if (!text.isEmpty()) {
            typed(SUPPLY_VOLTAGE, text);
        }
    }

    /** Takes over a figure worked elsewhere, SI. */
    void worked(final Quantity quantity, final double value) {
        json.put(quantity.id(), exact(value, quantity.dimension()));
    }

    /** A figure to be read back without loss that matters. */
    static String exact(final double value, final Dimension dimension) {
        return FigureText.of(value, dimension, EXACT);
    }
}
