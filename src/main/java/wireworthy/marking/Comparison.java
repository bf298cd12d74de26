package wireworthy.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Line;
import wireworthy.working.Step;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/**
 * A sound working and one gone wrong, line by line.
 *
 * @param rows in working order
 */
public record Comparison(List<Row> rows) {
    private static final double ROUNDING = 0.005;

    /**
     * One line of both.
     *
     * @param sound the sound line
     * @param wrong the numbers of the wrong one; empty while both still run together
     * @param parts whether the workings part here, the first time or once more
     */
    public record Row(Line sound, Optional<String> wrong, boolean parts) {}

    /** The sound working alone. */
    public static Comparison sound(final Worked worked, final Ref asked) {
        return new Comparison(
                Telling.way(worked, asked).stream()
                        .map(step -> Telling.line(worked, step, worked.values()))
                        .map(line -> new Row(line, Optional.empty(), false))
                        .toList());
    }

    /** The sound working beside one in which these slips were made. */
    public static Comparison of(final Worked worked, final Ref asked, final Outcome outcome) {
        final SlipFigures figures =
                SlipFigures.carriedOn(worked, asked, SlipFigures.nothingPinned(worked.plan()));
        final double[] wrong = figures.run(outcome.changes());
        final List<Row> rows = new ArrayList<>(misread(worked, outcome));
        boolean parted = !rows.isEmpty();
        for (final Step step : Telling.way(worked, asked)) {
            final boolean differs = differs(worked, step, wrong, outcome);
            final Line sound = Telling.line(worked, step, worked.values());
            final Optional<String> text =
                    differs ? Optional.of(numbers(worked, step, wrong, outcome)) : Optional.empty();
            final boolean again = parted && partsAgain(worked, step, asked, outcome);
            rows.add(new Row(sound, text, again || (differs && !parted)));
            parted |= differs;
        }
        return new Comparison(rows);
    }

    /** A given misread in its unit is a line of its own, where the workings part. */
    private static List<Row> misread(final Worked worked, final Outcome outcome) {
        return outcome.changes().stream()
                .filter(Change.Misread.class::isInstance)
                .map(Change.Misread.class::cast)
                .map(change -> misread(worked, change))
                .toList();
    }

    private static Row misread(final Worked worked, final Change.Misread change) {
        final Ref given = worked.plan().at(change.place());
        final String name = given.quantity().words();
        final double right = worked.values()[change.place()];
        return new Row(
                Telling.given(worked, given, right, name),
                Optional.of(Telling.given(worked, given, change.value(), name).numbers()),
                true);
    }

    /**
     * The sound working beside the one that the marks of its lines tell of.
     *
     * @param marks in working order, the one compared last
     * @return empty where the slips they name do not together give the last figure
     */
    public static Optional<Comparison> told(final Worked worked, final List<Mark> marks) {
        final List<Change> changes =
                marks.stream()
                        .filter(mark -> mark.diagnosis().settled())
                        .flatMap(mark -> mark.explained().stream().limit(1))
                        .flatMap(outcome -> outcome.changes().stream())
                        .distinct()
                        .toList();
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        final Mark last = marks.get(marks.size() - 1);
        final double value =
                SlipFigures.carriedOn(worked, last.ref(), SlipFigures.nothingPinned(worked.plan()))
                        .run(changes)[worked.plan().placeOf(last.ref()).orElseThrow()];
        return Optional.of(last.reading())
                .filter(Reading.Read.class::isInstance)
                .map(Reading.Read.class::cast)
                .filter(read -> near(read, value))
                .map(read -> of(worked, last.ref(), new Outcome(changes, value)));
    }

    /** As near as rounding on the way brings it. */
    private static boolean near(final Reading.Read read, final double value) {
        return Math.abs(read.value() - value) <= read.lastDigit() + ROUNDING * Math.abs(value);
    }

    /** The number of the row where the workings first part, from 0. */
    public OptionalInt partsAt() {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).parts()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static boolean differs(
            final Worked worked, final Step step, final double[] wrong, final Outcome outcome) {
        final double a = worked.values()[step.output()];
        final double b = wrong[step.output()];
        return slipAt(worked, step, outcome).isPresent()
                || !(Math.abs(a - b) <= 1e-9 * Math.abs(a));
    }

    /** Whether a later slip is made at this line. */
    private static boolean partsAgain(
            final Worked worked, final Step step, final Ref asked, final Outcome outcome) {
        return outcome.changes().stream()
                .skip(1)
                .anyMatch(
                        change ->
                                change instanceof Change.AtLine
                                        ? isAt(worked, step, change)
                                        : step.direction().output().equals(asked));
    }

    private static boolean isAt(final Worked worked, final Step step, final Change change) {
        return worked.plan().steps().get(change.line()).equals(step);
    }

    private static Optional<Change.AtLine> slipAt(
            final Worked worked, final Step step, final Outcome outcome) {
        return outcome.changes().stream()
                .filter(change -> change instanceof Change.AtLine && isAt(worked, step, change))
                .map(Change.AtLine.class::cast)
                .findFirst();
    }

    private static String numbers(
            final Worked worked, final Step step, final double[] wrong, final Outcome outcome) {
        final Ref ref = step.direction().output();
        return slipAt(worked, step, outcome)
                .map(c -> Telling.slipNumbers(worked.plan(), c.at().slip(), ref, wrong))
                .orElseGet(() -> Telling.line(worked, step, wrong).numbers());
    }
}
