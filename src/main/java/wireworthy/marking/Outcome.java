package wireworthy.marking;

import java.util.List;

/**
 * What a working gone wrong comes to.
 *
 * @param changes what went wrong, the earliest first
 * @param value SI value of the asked quantity
 */
public record Outcome(List<Change> changes, double value) {
    /** Whether it is one slip only, made at several lines alike. */
    boolean isAlike() {
        return changes.size() > 1 && ids().stream().distinct().count() == 1;
    }

    /** The slips by id. */
    public List<String> ids() {
        return changes.stream().map(Change::id).toList();
    }
}
