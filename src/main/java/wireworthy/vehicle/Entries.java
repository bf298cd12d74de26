package wireworthy.vehicle;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What was typed, by what it is for. The text stays as typed, whether it can be read or not; {@link
 * Understood} says what it means. Immutable, in the order of the keys.
 *
 * @param <K> what a text can be for
 * @param typed texts that are not blank
 */
public record Entries<K extends Enum<K>>(Map<K, String> typed) {
    public Entries {
        final Map<K, String> kept = new TreeMap<>(typed);
        kept.values().removeIf(String::isBlank);
        typed = Collections.unmodifiableMap(kept);
    }

    /** Nothing typed yet. */
    public static <K extends Enum<K>> Entries<K> none() {
        return new Entries<K>(Map.of());
    }

    /** The text as typed; empty where nothing was. */
    public String text(final K key) {
        return typed.getOrDefault(key, "");
    }

    public boolean has(final K key) {
        return typed.containsKey(key);
    }

    /** These with another text; a blank one takes the entry away. */
    public Entries<K> with(final K key, final String text) {
        final Map<K, String> changed = new TreeMap<>(typed);
        changed.put(key, text);
        return new Entries<>(changed);
    }
}
