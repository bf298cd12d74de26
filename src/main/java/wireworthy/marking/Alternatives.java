package wireworthy.marking;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.texts.TextBundle;
import wireworthy.working.Worked;

/**
 * What is said where several slips, or several at once, give one figure.
 *
 * @param asking whether a line can be asked for: not of a page
 */
record Alternatives(Worked worked, PlainLines lines, SlipWords slips, boolean asking) {
    private static final TextBundle MARKS = new TextBundle("marks");

    private static final int MOST = 3;
    private static final double CLEARLY = 0.02;

    /** Slips that give one figure: some go by one sentence of their own. */
    String several(final List<Outcome> explained, final Ref ref, final Reading.Read read) {
        final Optional<Outcome> tenTimes =
                explained.stream()
                        .filter(SlipWords::isTenTimes)
                        .filter(it -> asking || isAsNear(it, explained, read))
                        .findFirst();
        if (tenTimes.isPresent()) {
            return tenTimes(tenTimes.get(), explained, read);
        }
        final String twins =
                explained.stream()
                        .flatMap(outcome -> outcome.ids().stream())
                        .distinct()
                        .sorted()
                        .collect(Collectors.joining("+", "twins.", ""));
        return MARKS.has(twins)
                ? MARKS.of(twins)
                : withinLimit(
                        MARKS.of("either").replace("{either}", either(explained)),
                        " " + toTellThem(explained, ref));
    }

    /** Whether no other comes clearly nearer to the figure typed. */
    private static boolean isAsNear(
            final Outcome one, final List<Outcome> all, final Reading.Read read) {
        final double nearest = all.stream().mapToDouble(it -> off(it, read)).min().orElse(0);
        return off(one, read) <= nearest + CLEARLY * Math.abs(read.value());
    }

    private static double off(final Outcome outcome, final Reading.Read read) {
        return Math.abs(outcome.value() - read.value());
    }

    /** On a page, the figure that would show which it was; else the working. */
    private String toTellThem(final List<Outcome> explained, final Ref ref) {
        final Optional<Ref> line =
                asking ? Optional.empty() : new Telltale(worked, ref).of(explained);
        return line.map(it -> MARKS.of("either.put-in").replace("{line}", lines.name(it)))
                .orElseGet(lines::lineByLine);
    }

    /** A decimal point is the likeliest of what gives ten times as much, and said first. */
    private String tenTimes(
            final Outcome tenTimes, final List<Outcome> explained, final Reading.Read read) {
        final List<Outcome> others =
                explained.stream().filter(each -> !each.equals(tenTimes)).toList();
        final boolean milli =
                others.stream().allMatch(each -> each.ids().contains("milli-as-hundredth"));
        return slips.say(tenTimes.changes().get(0), read)
                + (milli
                        ? MARKS.of("ten-times.milli")
                        : MARKS.of("ten-times.also").replace("{either}", either(others)));
    }

    /** With what to do, where both together stay short. */
    private static String withinLimit(final String why, final String todo) {
        return PlainLines.fits(why + todo) ? why + todo : why;
    }

    /** Two slips in one working, or the two likeliest such pairs. */
    String pair(final List<Outcome> explained) {
        final Outcome first = explained.get(0);
        if (explained.size() > 1) {
            final String two = either(explained.subList(0, 2), "or-else");
            return withinLimit(
                    MARKS.of("pairs").replace("{either}", two), " " + lines.lineByLine());
        }
        return MARKS.of("pair")
                .replace("{first}", slips.clause(first.changes().get(0)))
                .replace("{second}", slips.clause(first.changes().get(1)))
                .replace("{line}", lines.name(SlipWords.lineOf(worked, first.changes().get(0))));
    }

    /** "A, B or C". */
    String either(final List<Outcome> explained) {
        return either(explained, "or");
    }

    /** "A, B or C" with the given last joint. */
    private String either(final List<Outcome> explained, final String joint) {
        final List<String> ways =
                explained.stream().map(slips::clauses).distinct().limit(MOST).toList();
        final int last = ways.size() - 1;
        final String first = String.join(MARKS.of("comma"), ways.subList(0, last));
        if (explained.stream().map(slips::clauses).distinct().count() > ways.size()) {
            return String.join(MARKS.of("comma"), ways) + MARKS.of("others");
        }
        return last == 0 ? ways.get(0) : first + MARKS.of(joint) + ways.get(last);
    }
}
