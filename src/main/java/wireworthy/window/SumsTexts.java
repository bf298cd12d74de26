package wireworthy.window;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.facts.CableTable;
import wireworthy.facts.Provenance;
import wireworthy.record.SumsInUse;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.texts.TextBundle;

/** The sums in use in words, from {@code texts/sums.properties}. */
final class SumsTexts {
    private static final TextBundle TEXTS = new TextBundle("sums");
    private static final int DIGITS = 3;

    private SumsTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }

    /** The text of one of several values: "craft.van" is "Van or truck". */
    static String of(final String key, final Enum<?> value) {
        return of(key + "." + value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** All three in a line. */
    static String all(final SumsInUse sums) {
        return joined(parts(sums));
    }

    /** Table, limit and margin, each in words. */
    static Stream<String> parts(final SumsInUse sums) {
        return Stream.of(
                table(sums.table()),
                limit(limitText(sums.dropLimit())),
                margin(marginText(sums.margin())));
    }

    static String joined(final Stream<String> parts) {
        return parts.collect(Collectors.joining(of("joint")));
    }

    /** A table by its name, and where its figures come from. */
    static String table(final CableTable table) {
        return of("table", "table", named(table));
    }

    /** "Thin-wall vehicle cable (common practice, no source)". */
    static String named(final CableTable table) {
        final Provenance provenance = table.source().provenance();
        final String source =
                provenance == Provenance.READ ? table.source().said() : provenance.words();
        return of("named", "title", name(table), "source", source);
    }

    /** "Thin-wall vehicle cable". */
    static String name(final CableTable table) {
        return Pretty.units(table.said().split(":", 2)[0]);
    }

    static String limit(final String limit) {
        return of("limit", "limit", limit);
    }

    static String limitText(final double share) {
        return FigureText.of(share, Dimension.SHARE, DIGITS);
    }

    static String margin(final String margin) {
        return of("margin", "margin", margin);
    }

    static String marginText(final double factor) {
        return FigureText.number(factor, Dimension.FACTOR, DIGITS);
    }
}
