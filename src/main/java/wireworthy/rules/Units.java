package wireworthy.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the unit that a spelling means for a kind of quantity. */
final class Units {

    private static final Map<Dimension, Spellings> KINDS = UnitTable.kinds();

    private Units() {}

    /** Nothing, one unit, or two that must be asked about. */
    static List<Unit> meanings(final Dimension dimension, final String typed) {
        final Spellings spellings = KINDS.get(kind(dimension));
        return spellings == null ? List.of() : spellings.meanings(typed);
    }

    /** The unit the text would be for a quantity of any kind. */
    static Optional<Unit> ofAnyKind(final String typed) {
        return KINDS.values().stream()
                .flatMap(spellings -> spellings.meanings(typed).stream())
                .findFirst();
    }

    /** Diameters share the units of length, short times those of time. */
    static Dimension kind(final Dimension dimension) {
        return switch (dimension) {
            case DIAMETER -> Dimension.LENGTH;
            case SHORT_TIME -> Dimension.TIME;
            default -> dimension;
        };
    }
}
