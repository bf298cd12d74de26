package wireworthy.evening.called;

import java.util.List;
import java.util.Optional;
import wireworthy.marking.Comparison;

/**
 * Where an answer comes from.
 *
 * @param key the same for answers that come from the same
 * @param title in short
 * @param why for people; empty where there is nothing to say
 * @param workings the sound working beside the one that gives the answer
 */
public record Origin(
        Kind kind, List<String> key, String title, String why, Optional<Comparison> workings) {
    /** Sorted in this order. */
    public enum Kind {
        SOUND,
        SLIP,
        UNKNOWN
    }

    public Origin {
        key = List.copyOf(key);
    }

    static Origin of(final Kind kind, final String key, final String title, final String why) {
        return new Origin(kind, List.of(key), title, why, Optional.empty());
    }

    boolean same(final Origin other) {
        return kind == other.kind && key.equals(other.key);
    }
}
