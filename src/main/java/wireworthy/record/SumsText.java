package wireworthy.record;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.core.JsonGenerator;

/** The sums in use as an entry of the settings. What is unknown gives way to what is usual. */
final class SumsText {
    private static final String SUMS = "/sums";

    private SumsText() {}

    /** The sums among the entries of the settings; empty where nobody chose any. */
    static Optional<SumsInUse> of(final Map<String, Object> entries) {
        if (entries.keySet().stream().noneMatch(it -> it.startsWith(SUMS + "/"))) {
            return Optional.empty();
        }
        final SumsInUse usual =
                SumsInUse.usual(
                        named(Craft.values(), entries, "/craft", SumsInUse.USUAL.craft()),
                        named(Region.values(), entries, "/region", SumsInUse.USUAL.region()),
                        named(WireSizes.values(), entries, "/sizes", SumsInUse.USUAL.sizes()));
        return Optional.of(
                new SumsInUse(
                        usual.craft(),
                        usual.region(),
                        usual.sizes(),
                        entry(entries, "/cableTable", usual.cableTable()),
                        entry(entries, "/dropLimit", usual.dropLimit()),
                        entry(entries, "/margin", usual.margin())));
    }

    private static <T> T entry(
            final Map<String, Object> entries, final String pointer, final T usual) {
        return SettingsText.entry(entries, SUMS + pointer, usual);
    }

    private static <E extends Enum<E>> E named(
            final E[] all, final Map<String, Object> entries, final String pointer, final E usual) {
        final String written = entry(entries, pointer, "");
        return Stream.of(all).filter(it -> word(it).equals(written)).findFirst().orElse(usual);
    }

    static void write(final JsonGenerator json, final SumsInUse sums) {
        json.writeObjectPropertyStart("sums");
        json.writeStringProperty("craft", word(sums.craft()));
        json.writeStringProperty("region", word(sums.region()));
        json.writeStringProperty("sizes", word(sums.sizes()));
        json.writeStringProperty("cableTable", sums.cableTable());
        json.writeNumberProperty("dropLimit", sums.dropLimit());
        json.writeNumberProperty("margin", sums.margin());
        json.writeEndObject();
    }

    /** The name in files, such as {@code north-america}. */
    private static String word(final Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
