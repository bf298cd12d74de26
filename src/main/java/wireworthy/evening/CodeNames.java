package wireworthy.evening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Who a sheet is for: code names, or numbers only.
 *
 * @param names in the order of the learners' numbers; empty texts where there are only numbers
 */
public record CodeNames(List<String> names) {
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
     * Names as typed or from a CSV file; see {@link NameList}.
     *
     * @throws EveningProblem where there is none, one comes twice or is too long
     */
    public static CodeNames read(final String text) {
        final List<String> names = new ArrayList<>();
        final Set<String> known = new HashSet<>();
        for (final String name : NameList.of(text).names()) {
            names.add(fit(name, known));
        }
        if (names.isEmpty()) {
            throw EveningProblem.of("names.none");
        }
        return new CodeNames(names);
    }

    private static String lower(final String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String fit(final String name, final Set<String> known) {
        if (name.length() > NameList.LONGEST || name.chars().anyMatch(Character::isISOControl)) {
            throw EveningProblem.of(
                    "names.unfit",
                    "name",
                    name.substring(0, Math.min(NameList.LONGEST, name.length())),
                    "most",
                    NameList.LONGEST);
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
