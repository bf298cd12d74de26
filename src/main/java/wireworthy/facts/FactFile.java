package wireworthy.facts;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvReadFeature;

/**
 * A table's data file: comment lines "# name: words" (title, source, provenance and scope once,
 * note as often as need be), then CSV with a heading line. The stream parser is used bare because
 * binding to objects would cost every start of the program some tenths of a second.
 */
final class FactFile {
    private static final CsvFactory CSV =
            CsvFactory.builder().enable(CsvReadFeature.ALLOW_COMMENTS).build();

    private final String name;
    private final String text;

    private FactFile(final String name, final String text) {
        this.name = name;
        this.text = text;
    }

    /** Reads the table of this id from the files beside this class. */
    static FactTable read(final String id) {
        return new FactFile(id + ".csv", resource(id + ".csv")).table(id);
    }

    /** Reads a table from a text; {@code name} stands for it in error messages. */
    static FactTable parse(final String name, final String text) {
        return new FactFile(name, text).table(name);
    }

    private static String resource(final String name) {
        try (InputStream stream = FactFile.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("The program has no table file " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (final IOException e) {
            throw new UncheckedIOException("Cannot read the table file " + name, e);
        }
    }

    private FactTable table(final String id) {
        final List<List<String>> lines = lines();
        if (lines.size() < 2) {
            throw new IllegalStateException(name + ": no heading line with rows below it");
        }
        return new FactTable(
                id,
                header("title"),
                header("scope"),
                new Source(header("source"), Provenance.opening(header("provenance"))),
                headers("note"),
                lines.get(0),
                lines.subList(1, lines.size()));
    }

    private String header(final String key) {
        final List<String> found = headers(key);
        if (found.size() != 1) {
            throw new IllegalStateException(
                    name + ": needs one line \"# " + key + ": ...\" but has " + found.size());
        }
        return found.get(0);
    }

    private List<String> headers(final String key) {
        final String opening = "# " + key + ": ";
        return text.lines()
                .filter(line -> line.startsWith(opening))
                .map(line -> line.substring(opening.length()).strip())
                .toList();
    }

    private List<List<String>> lines() {
        final List<List<String>> lines = new ArrayList<>();
        try (JsonParser parser =
                CSV.createParser(ObjectReadContext.empty(), new StringReader(text))) {
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                final List<String> line = line(parser);
                if (!lines.isEmpty() && line.size() != lines.get(0).size()) {
                    throw new IllegalStateException(
                            "%s: %d cells in %s, but the heading has %d"
                                    .formatted(name, line.size(), line, lines.get(0).size()));
                }
                lines.add(line);
            }
        }
        return lines;
    }

    private static List<String> line(final JsonParser parser) {
        final List<String> cells = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            cells.add(parser.getString());
        }
        return cells;
    }
}
