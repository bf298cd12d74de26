package wireworthy.practice;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wireworthy.rules.Words;
import wireworthy.working.Line;

/** The four levels of help with a line, in the order in which they are given. */
public enum Help {
    /** Which quantities the line is worked from. */
    NEEDED,
    /** The rule in words. */
    RULE,
    /** The rule with the numbers of this problem. */
    NUMBERS,
    /** The line worked. */
    WORKED;

    private static final String GIVES = " = ";

    /** What this level of help says of a line. */
    public String text(final ProblemLine line) {
        final Line told = line.told();
        return switch (this) {
            case NEEDED -> LineTexts.of(key(), "needs", needs(line.needs()));
            case RULE ->
                    LineTexts.of(
                            key(), "phrase", Words.ofRule(told.rule()), "formula", told.formula());
            case NUMBERS -> LineTexts.of(key(), "sum", sum(told.numbers()));
            case WORKED -> LineTexts.of(key(), "numbers", told.numbers());
        };
    }

    /** How a button names it before it is given: "the rule". */
    public String next() {
        return LineTexts.of(key() + ".next");
    }

    private String key() {
        return "help." + name().toLowerCase(Locale.ROOT);
    }

    private static String needs(final List<ProblemLine.Need> needs) {
        final List<String> texts = needs.stream().map(ProblemLine.Need::words).toList();
        final String last = texts.get(texts.size() - 1);
        final String head =
                texts.stream().limit(texts.size() - 1L).collect(Collectors.joining(", "));
        return head.isEmpty() ? last : head + LineTexts.of("and") + last;
    }

    private static String sum(final String numbers) {
        final int end = numbers.lastIndexOf(GIVES);
        return end < 0 ? numbers : numbers.substring(0, end);
    }
}
