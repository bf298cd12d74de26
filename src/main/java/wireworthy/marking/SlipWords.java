package wireworthy.marking;

import java.util.stream.Collectors;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.Voltages;
import wireworthy.texts.TextBundle;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** What is said of each slip, with the numbers of the question in it. */
record SlipWords(Worked worked) {
    private static final TextBundle SLIPS = new TextBundle("slips");
    private static final TextBundle MARKS = new TextBundle("marks");
    private static final String OTHER_VOLTAGE = "other-system-voltage";

    /** Whether the decimal point of the result moved by one place, and nothing else went wrong. */
    static boolean isTenTimes(final Outcome outcome) {
        return outcome.changes().size() == 1 && outcome.changes().get(0) instanceof Change.OfResult;
    }

    /** The line at which something went wrong, or the given that was misread. */
    static Ref lineOf(final Worked worked, final Change change) {
        return worked.plan()
                .at(
                        change instanceof Change.Misread misread
                                ? misread.place()
                                : worked.plan().steps().get(change.line()).output());
    }

    /** What gives the figure. */
    String say(final Change change, final Reading.Read read) {
        return filled(
                mayBe(change, read) ? MARKS.of("ten-times.may-be") : SLIPS.of(change.id() + ".say"),
                change);
    }

    /** Why, and what to do. */
    String todo(final Change change, final Reading.Read read) {
        return filled(
                mayBe(change, read)
                        ? MARKS.of("ten-times.may-be.do")
                        : SLIPS.of(change.id() + ".do"),
                change);
    }

    /** One digit alone does not tell that the others hold. */
    private static boolean mayBe(final Change change, final Reading.Read read) {
        return change instanceof Change.OfResult && read.significantDigits() < 2;
    }

    /** A clause for "either ... or ...". */
    String clause(final Change change) {
        return change.id().equals(OTHER_VOLTAGE)
                ? filled(MARKS.of("other-voltage"), change)
                : SLIPS.of(change.id() + ".short");
    }

    /** The clauses of all that went wrong. */
    String clauses(final Outcome outcome) {
        return outcome.changes().stream()
                .map(this::clause)
                .collect(Collectors.joining(MARKS.of("and")));
    }

    private String filled(final String text, final Change change) {
        if (change instanceof Change.OfResult result) {
            return text.replace(
                    "{side}", MARKS.of(result.factor() > 1 ? "too.large" : "too.small"));
        }
        return change.id().equals(OTHER_VOLTAGE) ? withVolts(text) : text;
    }

    private String withVolts(final String text) {
        final double volts = worked.value(Quantity.SUPPLY_VOLTAGE).orElseThrow();
        return text.replace("{used}", told(Voltages.otherSystem(volts)))
                .replace("{volts}", told(volts));
    }

    private static String told(final double volts) {
        return Telling.exact(Quantity.SUPPLY_VOLTAGE, volts);
    }
}
