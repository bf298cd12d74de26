package wireworthy.evening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Who a sheet is for: code names, or numbers only.
 *
 * @param names in the order of the learners' numbers; empty texts where there are only numbers
 */
public record CodeNames(List<String> names) {
    private static final int LONGEST = 30;
    private static final String PARTED_BY = "[,;\\t]";
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

    public CodeNames {
        names = List.copyOf(names);
        if (names.size() > SheetPlan.MOST_LEARNERS) {
            throw EveningProblem.of(
                    "names.many", "names", names.size(), "most", SheetPlan.MOST_LEARNERS);
        }
    }

    /** So many learners without names. */
    public static CodeNames numbers(final int learners) {
        return new CodeNames(IntStream.range(0, learners).mapToObj(i -> "").toList());
    }

    /**
     * Names as typed or from a CSV file, parted by commas, semicolons, tabs or lines. Under a
     * heading such as "name" only its column counts; bare numbers beside a name are passed over.
     *
     * @throws EveningProblem where there is none, one comes twice or is too long
     */
    public static CodeNames read(final String text) {
        final List<String> names = new ArrayList<>();
        final Set<String> known = new HashSet<>();
        for (final String name : candidates(text.replace(BYTE_ORDER_MARK, "").lines().toList())) {
            names.add(fit(name, known));
        }
        if (names.isEmpty()) {
            throw EveningProblem.of("names.none");
        }
        return new CodeNames(names);
    }

    private static List<String> candidates(final List<String> lines) {
        final List<List<String>> rows =
                lines.stream().filter(line -> !line.isBlank()).map(CodeNames::parts).toList();
        final OptionalInt column = rows.size() > 1 ? heading(rows.get(0)) : OptionalInt.empty();
        return column.isPresent()
                ? rows.stream()
                        .skip(1)
                        .flatMap(row -> row.stream().skip(column.getAsInt()).limit(1))
                        .filter(name -> !name.isEmpty())
                        .toList()
                : rows.stream().flatMap(CodeNames::names).toList();
    }

    private static List<String> parts(final String line) {
        return Arrays.stream(line.split(PARTED_BY, -1))
                .map(part -> unquoted(part.strip()))
                .toList();
    }

    private static boolean isHeading(final String part) {
        return HEADINGS.contains(lower(part));
    }

    /** Which column has a heading. */
    private static OptionalInt heading(final List<String> row) {
        return IntStream.range(0, row.size()).filter(i -> isHeading(row.get(i))).findFirst();
    }

    private static Stream<String> names(final List<String> row) {
        final boolean words = row.stream().anyMatch(part -> !part.matches("\\d*"));
        return row.stream()
                .filter(part -> !part.isEmpty() && !isHeading(part))
                .filter(part -> !(words && part.matches("\\d+")));
    }

    private static String unquoted(final String part) {
        final boolean quoted = part.length() > 1 && part.startsWith("\"") && part.endsWith("\"");
        return quoted ? part.substring(1, part.length() - 1).strip() : part;
    }

    private static String lower(final String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String fit(final String name, final Set<String> known) {
        if (name.length() > LONGEST || name.chars().anyMatch(Character::isISOControl)) {
            throw EveningProblem.of(
                    "names.unfit",
                    "name",
                    name.substring(0, Math.min(LONGEST, name.length())),
                    "most",
                    LONGEST);
        }
        if (!known.add(lower(name))) {
            throw EveningProblem.of("names.twice", "name", name);
        }
        return name;
    }

    /**
     * With the name of one learner as typed; where nothing is typed, as it is.
     *
     * @throws EveningProblem where it is none, or several
     */
    public CodeNames with(final int learner, final String typed) {
        if (typed.isBlank()) {
            return this;
        }
        final CodeNames one = read(typed);
        if (one.size() > 1) {
            throw EveningProblem.of("names.several");
        }
        final List<String> all = new ArrayList<>(names);
        all.set(learner - 1, one.of(1));
        return new CodeNames(all);
    }

    public int size() {
        return names.size();
    }

    /** The name of a learner by number; empty where there is none. */
    public String of(final int learner) {
        return learner <= names.size() ? names.get(learner - 1) : "";
    }

    /** "7 Wren", or only the number. */
    public String label(final int learner) {
        return (learner + " " + of(learner)).strip();
    }
}
