package wireworthy.marking;

import java.util.HashMap;
import java.util.Map;

/**
 * What is plainly wrong with a figure that no slip explains.
 *
 * @param key of its sentence
 * @param unit the key of a unit that the sentence names; empty mostly
 * @param places what stands in the sentence, by place
 */
record Check(String key, String unit, Map<String, String> places) {
    static Check of(final String key) {
        return new Check("check." + key, "", Map.of());
    }

    static Check ofUnit(final String unit) {
        return new Check("check.unit", unit, Map.of());
    }

    Check with(final String place, final String text) {
        final Map<String, String> all = new HashMap<>(places);
        all.put(place, text);
        return new Check(key, unit, all);
    }
}
