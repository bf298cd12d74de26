package wireworthy.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The ids of all known slips in their fixed order, from {@code slips.csv}: id, topic, step. */
public final class SlipCatalogue {
    private static final List<String> IDS = read();
    private static final Map<String, Integer> ORDER = order();

    private SlipCatalogue() {}

    /** All ids in order. */
    public static List<String> ids() {
        return IDS;
    }

    /** Where an id stands; after all others where it is unknown. */
    public static int order(final String id) {
        return ORDER.getOrDefault(id, IDS.size());
    }

    /** Whether there is a slip of this id. */
    public static boolean has(final String id) {
        return ORDER.containsKey(id);
    }

    private static Map<String, Integer> order() {
        final Map<String, Integer> order = new HashMap<>();
        IDS.forEach(id -> order.put(id, order.size()));
        return order;
    }

    private static List<String> read() {
        final InputStream stream =
                Objects.requireNonNull(SlipCatalogue.class.getResourceAsStream("slips.csv"));
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines().skip(1).map(line -> line.substring(0, line.indexOf(','))).toList();
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
