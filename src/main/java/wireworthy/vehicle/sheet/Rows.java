package wireworthy.vehicle.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts a text into rows and cells. Not by a library: a quotation mark that is never closed must
 * not swallow the rows behind it, and every row has to know its line.
 */
final class Rows {
    private static final int LONGEST_QUOTE = 5000;
    private static final int MOST_LINES_QUOTED = 30;

    private final String text;
    private final char separator;
    private final char quote;
    private int at;
    private int line;
    private List<String> cells = new ArrayList<>();
    private String problem = "";

    private Rows(
            final String text,
            final int from,
            final int line,
            final char separator,
            final char quote) {
        this.text = text;
        this.at = from;
        this.line = line;
        this.separator = separator;
        this.quote = quote;
    }

    /**
     * The rows from a place on.
     *
     * @param line of the file at that place
     * @param quote what stands before and behind a cell that holds the separator
     * @param most rows to read
     */
    static List<SheetRow> of(
            final String text,
            final int from,
            final int line,
            final char separator,
            final char quote,
            final int most) {
        final Rows rows = new Rows(text, from, line, separator, quote);
        final List<SheetRow> all = new ArrayList<>();
        while (rows.at < text.length() && all.size() < most) {
            all.add(rows.row());
        }
        return all;
    }

    private SheetRow row() {
        final int begins = line;
        cells = new ArrayList<>();
        problem = "";
        cells.add(cell());
        while (at < text.length() && text.charAt(at) == separator) {
            at++;
            cells.add(cell());
        }
        endOfLine();
        return new SheetRow(begins, trimmed(), problem);
    }

    private void endOfLine() {
        if (at < text.length()) {
            final boolean both = text.startsWith("\r\n", at);
            at += both ? 2 : 1;
            line++;
        }
    }

    private List<String> trimmed() {
        int end = cells.size();
        while (end > 0 && cells.get(end - 1).isBlank()) {
            end--;
        }
        return cells.subList(0, end);
    }

    private String cell() {
        final int start = afterBlanks();
        final boolean formula = text.startsWith("=\"", start);
        final int begin = formula ? start + 1 : start;
        if (begin < text.length() && text.charAt(begin) == quote) {
            final int end = closing(begin);
            if (end >= 0) {
                return quoted(begin, end);
            }
            problem = SheetTexts.of("row.quote");
        }
        return plain();
    }

    private int afterBlanks() {
        int start = at;
        while (start < text.length() && text.charAt(start) == ' ' && separator != ' ') {
            start++;
        }
        return start;
    }

    /** The quotation mark that ends a cell; less than nothing where none does. */
    private int closing(final int begin) {
        int lines = 0;
        final int last = Math.min(text.length(), begin + LONGEST_QUOTE);
        for (int i = begin + 1; i < last; i++) {
            final char c = text.charAt(i);
            if (c == '\n' && ++lines > MOST_LINES_QUOTED) {
                return -1;
            }
            if (c == quote) {
                if (i + 1 < text.length() && text.charAt(i + 1) == quote) {
                    i++;
                } else {
                    return endsCell(i + 1) ? i : -1;
                }
            }
        }
        return -1;
    }

    private boolean endsCell(final int after) {
        int next = after;
        while (next < text.length() && text.charAt(next) == ' ') {
            next++;
        }
        return next >= text.length() || ends(text.charAt(next));
    }

    private boolean ends(final char c) {
        return c == separator || c == '\n' || c == '\r';
    }

    private String quoted(final int begin, final int end) {
        final String inside = text.substring(begin + 1, end);
        line += lines(inside);
        at = end + 1;
        while (at < text.length() && !ends(text.charAt(at))) {
            at++;
        }
        final String mark = String.valueOf(quote);
        return inside.replace(mark + mark, mark).strip();
    }

    private static int lines(final String text) {
        int lines = 0;
        for (int i = 0; i < text.length(); i++) {
            final char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1))) {
                lines++;
            }
        }
        return lines;
    }

    private String plain() {
        final int start = at;
        while (at < text.length() && !ends(text.charAt(at))) {
            at++;
        }
        return text.substring(start, at).strip();
    }
}
