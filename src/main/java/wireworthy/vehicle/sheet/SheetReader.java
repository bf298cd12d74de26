package wireworthy.vehicle.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Reads CSV files of any make. */
public final class SheetReader {
    public static final int MOST_ROWS = 200_000;
    public static final int MOST_COLUMNS = 200;
    private static final long MOST_BYTES = 64L * 1024 * 1024;
    private static final int LOOKED_AT = 30;
    private static final int LETTERS_LOOKED_AT = 4000;
    private static final int FEW = 2;
    private static final Pattern IN_APOSTROPHES =
            Pattern.compile("(?:^|[,;\\t|])'[^'\\n]*'(?=[,;\\t|\\r\\n])", Pattern.MULTILINE);
    private static final Pattern IN_QUOTES =
            Pattern.compile("(?:^|[,;\\t|])=?\"[^\"]*\"(?=[,;\\t|\\r\\n])", Pattern.MULTILINE);
    private static final List<Character> SEPARATORS = List.of('\t', ';', ',', '|');

    private SheetReader() {}

    /** Reads a file; never throws. */
    public static SheetRead read(final Path file) {
        try {
            return Files.size(file) > MOST_BYTES ? tooLarge() : read(Files.readAllBytes(file));
        } catch (final IOException e) {
            return refused("unread");
        }
    }

    /** Reads the bytes of a file. */
    public static SheetRead read(final byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return tooLarge();
        }
        if (isWorkbook(bytes)) {
            return refused("workbook");
        }
        final Letters letters = Letters.of(bytes);
        return letters.text().isBlank() ? refused("empty") : read(letters);
    }

    private static SheetRead tooLarge() {
        return refused("large");
    }

    private static SheetRead refused(final String what, final Object... filling) {
        final String key = "file." + what;
        return new SheetRead.Refused(
                SheetTexts.of(key, filling), SheetTexts.of(key + ".do", filling));
    }

    /** The first letters of a zip file and of the older workbooks. */
    private static boolean isWorkbook(final byte[] bytes) {
        final boolean long4 = bytes.length > 3;
        final boolean zip = long4 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] == 3;
        return zip || (long4 && (bytes[0] & 0xFF) == 0xD0 && (bytes[1] & 0xFF) == 0xCF);
    }

    private static SheetRead read(final Letters letters) {
        final String text = letters.text();
        final boolean said = text.regionMatches(true, 0, "sep=", 0, 4) && text.length() > 4;
        final int from = said ? afterLine(text) : 0;
        final char quote = quote(text);
        final char separator = said ? text.charAt(4) : separator(text, quote);
        final List<SheetRow> rows =
                Rows.of(text, from, said ? 2 : 1, separator, quote, MOST_ROWS + 1);
        if (rows.size() > MOST_ROWS) {
            return refused("rows", "most", MOST_ROWS);
        }
        if (rows.stream().anyMatch(row -> row.cells().size() > MOST_COLUMNS)) {
            return refused("columns", "most", MOST_COLUMNS);
        }
        return new SheetRead.Whole(new Sheet(letters.encoding(), separator, rows));
    }

    private static int afterLine(final String text) {
        final int end = text.indexOf('\n');
        return end < 0 ? text.length() : end + 1;
    }

    /** An apostrophe, where cells stand between two of them and none between quotation marks. */
    private static char quote(final String text) {
        final String first = text.substring(0, Math.min(text.length(), LETTERS_LOOKED_AT));
        return IN_APOSTROPHES.matcher(first).results().limit(FEW).count() == FEW
                        && !IN_QUOTES.matcher(first).find()
                ? '\''
                : '"';
    }

    /** The separator that parts the first rows most evenly. */
    private static char separator(final String text, final char quote) {
        char best = ',';
        long most = 0;
        for (final char each : SEPARATORS) {
            final long evenness = evenness(Rows.of(text, 0, 1, each, quote, LOOKED_AT));
            if (evenness > most) {
                most = evenness;
                best = each;
            }
        }
        return best;
    }

    /** How many rows have the commonest number of cells, weighed by that number; 0 for one cell. */
    private static long evenness(final List<SheetRow> rows) {
        final Map<Integer, Long> counts = new HashMap<>();
        rows.stream()
                .filter(row -> row.cells().size() > 1)
                .forEach(row -> counts.merge(row.cells().size(), 1L, Long::sum));
        return counts.entrySet().stream()
                .mapToLong(e -> 1000 * e.getValue() + e.getKey())
                .max()
                .orElse(0);
    }
}
