package wireworthy.evening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.texts.TextBundle;

/**
 * The names of a list as typed or from a CSV file, whether they will do or not. Under a heading
 * such as "name" only its column counts; bare numbers beside a name are passed over.
 *
 * @param names in their order
 */
public record NameList(List<String> names) {
    static final int LONGEST = 30;
    private static final TextBundle TEXTS = new TextBundle("evening");
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final Set<String> HEADINGS =
            Set.of(
                    "name",
                    "names",
                    "code name",
                    "code names",
                    "namen",
                    "codename",
                    "codenamen",
                    "deckname",
                    "decknamen");

    public NameList {
        names = List.copyOf(names);
    }

    /** Reads them, parted by commas, semicolons, tabs or lines. */
    public static NameList of(final String text) {
        final List<List<String>> rows =
                text.replace(BYTE_ORDER_MARK, "")
                        .lines()
                        .filter(line -> !line.isBlank())
                        .map(NameCells::of)
                        .toList();
        final OptionalInt column = rows.size() > 1 ? heading(rows.get(0)) : OptionalInt.empty();
        return new NameList(
                column.isPresent()
                        ? rows.stream()
                                .skip(1)
                                .flatMap(row -> row.stream().skip(column.getAsInt()).limit(1))
                                .filter(name -> !name.isEmpty())
                                .toList()
                        : rows.stream().flatMap(NameList::inRow).toList());
    }

    /** Which column has a heading. */
    private static OptionalInt heading(final List<String> row) {
        return IntStream.range(0, row.size()).filter(i -> isHeading(row.get(i))).findFirst();
    }

    private static Stream<String> inRow(final List<String> row) {
        final boolean words = row.stream().anyMatch(part -> !part.matches("\\d*"));
        return row.stream()
                .filter(part -> !part.isEmpty() && !isHeading(part))
                .filter(part -> !(words && part.matches("\\d+")));
    }

    private static boolean isHeading(final String part) {
        return HEADINGS.contains(part.toLowerCase(Locale.ROOT));
    }

    /** One a line, to be looked over. */
    public String text() {
        return String.join("\n", names);
    }

    /** Those that come more than once, as they stand there first. */
    List<String> twice() {
        final Set<String> known = new HashSet<>();
        final Set<String> twice = new LinkedHashSet<>();
        names.stream()
                .filter(name -> !known.add(name.toLowerCase(Locale.ROOT)))
                .forEach(twice::add);
        return List.copyOf(twice);
    }

    /** Those that are too long, or hold signs that no paper shows; cut to what is shown. */
    List<String> unfit() {
        return names.stream()
                .filter(name -> name.length() > LONGEST || hidden(name))
                .map(name -> name.substring(0, Math.min(LONGEST, name.length())))
                .toList();
    }

    private static boolean hidden(final String name) {
        return name.chars().anyMatch(Character::isISOControl);
    }

    /** How many there are, and which of them will not do; nothing for none. */
    public String said() {
        final List<String> said = new ArrayList<>();
        if (!names.isEmpty()) {
            said.add(TEXTS.of("names.counted", "count", names.size()));
        }
        if (!twice().isEmpty()) {
            said.add(TEXTS.of("names.twice", "names", String.join(", ", twice())));
        }
        if (!unfit().isEmpty()) {
            said.add(
                    TEXTS.of(
                            "names.long",
                            "names",
                            String.join("…, ", unfit()) + "…",
                            "most",
                            LONGEST));
        }
        return String.join(" ", said);
    }
}
