package wireworthy.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The cells of one line of a list, parted by commas, semicolons or tabs. Quotes in which a cell
 * stands are taken off, whatever their shape; a separator between them parts nothing and becomes a
 * space, for a name has none.
 */
final class NameCells {
    private static final String PARTED_BY = ",;\t";
    private static final Map<Character, String> QUOTES =
            Map.of(
                    '"',
                    "\"",
                    '\u201c',
                    "\u201d",
                    '\u201e',
                    "\u201c\u201d",
                    '\u2018',
                    "\u2019",
                    '\u201a',
                    "\u2018\u2019",
                    '\u00ab',
                    "\u00bb",
                    '\u00bb',
                    "\u00ab",
                    '\'',
                    "'");

    private final String line;
    private final List<String> cells = new ArrayList<>();
    private int at;

    private NameCells(final String line) {
        this.line = line;
    }

    static List<String> of(final String line) {
        final NameCells read = new NameCells(line);
        while (read.at <= line.length()) {
            read.cell();
        }
        return List.copyOf(read.cells);
    }

    private void cell() {
        int begin = at;
        while (begin < line.length() && line.charAt(begin) == ' ') {
            begin++;
        }
        final int end = begin < line.length() ? quoted(begin) : -1;
        if (end >= 0) {
            cells.add(plain(line.substring(begin + 1, end)));
            at = parted(end) + 1;
        } else {
            final int next = parted(at);
            cells.add(line.substring(at, next).strip());
            at = next + 1;
        }
    }

    /** Where quotes that begin here end, right before a separator or the end; -1: they do not. */
    private int quoted(final int begin) {
        final String close = QUOTES.getOrDefault(line.charAt(begin), "");
        for (int i = begin + 1; i < line.length() && !close.isEmpty(); i++) {
            final boolean closes = close.indexOf(line.charAt(i)) >= 0;
            if (closes && line.substring(i + 1, parted(i + 1)).isBlank()) {
                return i;
            }
        }
        return -1;
    }

    private int parted(final int from) {
        int end = from;
        while (end < line.length() && PARTED_BY.indexOf(line.charAt(end)) < 0) {
            end++;
        }
        return end;
    }

    private static String plain(final String quoted) {
        return quoted.replace("\"\"", "\"").replaceAll("[" + PARTED_BY + "\\s]+", " ").strip();
    }
}
