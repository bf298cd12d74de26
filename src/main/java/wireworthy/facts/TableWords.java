package wireworthy.facts;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wireworthy.texts.Language;
import wireworthy.texts.Phrases;

/** What stands in the tables in the language in use; titles of publications stay as published. */
final class TableWords {
    private static final Phrases PHRASES = new Phrases("tables");

    /** A cell without a word is one of figures, or a formula. */
    private static final Pattern WORD = Pattern.compile("(?!mm|sqrt)[A-Za-z]{2}");

    private static final Pattern DECIMAL = Pattern.compile("\\d\\.\\d");

    /** Numbers of clauses look like figures and are none. */
    private static final String CLAUSE = "Clause";

    private static final String APART = "; ";

    private TableWords() {}

    /** A title, a heading or a sentence. */
    static String of(final String english) {
        return PHRASES.of(english);
    }

    /** All of a table but its id. */
    static FactTable of(final FactTable table) {
        return Language.inUse().ofSources()
                ? table
                : new FactTable(
                        table.id(),
                        of(table.title()),
                        of(table.scope()),
                        new Source(of(table.source().title()), table.source().provenance()),
                        table.notes().stream().map(TableWords::of).toList(),
                        table.columns().stream().map(TableWords::of).toList(),
                        table.rows().stream().map(row -> row(table.columns(), row)).toList());
    }

    private static List<String> row(final List<String> columns, final List<String> cells) {
        return IntStream.range(0, cells.size())
                .mapToObj(
                        i -> columns.get(i).equals(CLAUSE) ? of(cells.get(i)) : cell(cells.get(i)))
                .toList();
    }

    private static String cell(final String cell) {
        return Arrays.stream(cell.split(APART))
                .map(TableWords::part)
                .collect(Collectors.joining(APART));
    }

    private static String part(final String part) {
        final String said = of(part);
        return said.equals(part) && isFigures(part) ? commas(part) : said;
    }

    private static boolean isFigures(final String text) {
        return DECIMAL.matcher(text).find() && !WORD.matcher(text).find();
    }

    private static String commas(final String figures) {
        return Language.inUse().number(figures);
    }
}
