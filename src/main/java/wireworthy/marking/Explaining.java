package wireworthy.marking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Danger;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Puts a mark into words: the learner's figure first, then the line, then what to do. */
final class Explaining {
    private static final ResourceBundle SLIPS = ResourceBundle.getBundle("wireworthy.texts.slips");
    private static final ResourceBundle DANGERS =
            ResourceBundle.getBundle("wireworthy.texts.dangers");
    private static final ResourceBundle MARKS = ResourceBundle.getBundle("wireworthy.texts.marks");

    private static final int MOST_ALTERNATIVES = 3;
    private static final double BELIEVED = 5;
    private static final double BELIEVED_OF_VOLTS_LEFT = 2;
    private final Worked worked;
    private final PlainLines lines;

    Explaining(final Worked worked) {
        this.worked = worked;
        this.lines = new PlainLines(worked);
    }

    String sound(final Ref ref, final Reading.Read read, final double right) {
        final boolean larger =
                ref.quantity().chosen() && Math.abs(read.value() - right) > 1e-6 * right;
        return fill(MARKS.getString(larger ? largerKey(ref) : "sound"), ref, read, right);
    }

    private static String largerKey(final Ref ref) {
        return ref.quantity() == Quantity.FUSE ? "sound.fuse" : "sound.larger";
    }

    String negative(final Ref ref, final Reading.Read read) {
        return fill(MARKS.getString("negative"), ref, read, read.value());
    }

    String roundedEarly(final Ref ref, final Reading.Read read, final double right) {
        return fill(MARKS.getString("rounded-early"), ref, read, right);
    }

    String followed(
            final Ref ref,
            final Reading.Read read,
            final double right,
            final Optional<Dangers> danger) {
        final String text = MARKS.getString("follows");
        return fill(withDanger(text, danger.filter(Explaining::fire)), ref, read, right);
    }

    String unsound(
            final Ref ref,
            final Reading.Read read,
            final double right,
            final Diagnosis found,
            final Optional<Dangers> danger) {
        final Optional<Dangers> worth = danger.filter(d -> worthSaying(d, ref, read, right));
        if (!found.explained().isEmpty()) {
            return fill(withDanger(known(found, ref), worth), ref, read, right);
        }
        final Optional<Check> check = Checks.first(worked, ref, read, right);
        final String why = check.map(Explaining::text).orElseGet(() -> lines.unknown(found));
        final String asked = check.isPresent() ? lines.question(found, "") : "";
        final Optional<Dangers> said = check.isPresent() ? worth.filter(Explaining::fire) : worth;
        return fill(withDanger(why + asked, said), ref, read, right);
    }

    /** What it costs is not said of a figure that nobody would buy for. */
    private static boolean worthSaying(
            final Dangers danger, final Ref ref, final Reading.Read read, final double right) {
        final double believed =
                ref.quantity() == Quantity.VOLTAGE_AT_LOAD ? BELIEVED_OF_VOLTS_LEFT : BELIEVED;
        return danger.danger() != Danger.COSTS_MONEY
                || Checks.timesOff(read.value(), right) < believed;
    }

    private static boolean fire(final Dangers danger) {
        return danger.danger() == Danger.FIRE;
    }

    /** What could start a fire is said before all else. */
    private static String withDanger(final String why, final Optional<Dangers> danger) {
        final String warning = danger.map(d -> DANGERS.getString(d.key())).orElse("");
        return danger.filter(Explaining::fire).isPresent()
                ? warning + " " + why
                : (why + " " + warning).strip();
    }

    private String known(final Diagnosis found, final Ref ref) {
        final List<Outcome> explained = told(found.explained());
        final Outcome first = explained.get(0);
        if (found.ask().isPresent()) {
            return MARKS.getString("to-be-sure").replace("{either}", either(explained, "or"))
                    + lines.question(found, "to-be-sure.");
        }
        if (first.changes().size() > 1) {
            return pair(explained);
        }
        final String todo = " " + SLIPS.getString(first.ids().get(0) + ".do");
        return explained.size() == 1
                ? single(first, ref, SLIPS.getString(first.ids().get(0) + ".say"), todo)
                : withinLimit(
                        MARKS.getString("either").replace("{either}", either(explained, "or")),
                        todo);
    }

    /** Without a misreading that a later one names more closely: milliohms, not thousandths. */
    private static List<Outcome> told(final List<Outcome> explained) {
        return IntStream.range(0, explained.size())
                .filter(
                        i ->
                                explained.subList(i + 1, explained.size()).stream()
                                        .noneMatch(later -> sameReading(explained.get(i), later)))
                .mapToObj(explained::get)
                .toList();
    }

    private static boolean sameReading(final Outcome one, final Outcome other) {
        return one.changes().size() == 1
                && other.changes().size() == 1
                && one.changes().get(0) instanceof Change.Misread a
                && other.changes().get(0) instanceof Change.Misread b
                && a.place() == b.place()
                && a.value() == b.value();
    }

    /** With the sum that went wrong in the numbers of the question, where there is room for it. */
    private String single(final Outcome slip, final Ref ref, final String say, final String todo) {
        return slipSum(slip, ref)
                .map(sum -> say + sum + todo)
                .filter(PlainLines::fits)
                .orElse(say + todo);
    }

    /** At the asked line without what it comes to, which is the learner's figure. */
    private Optional<String> slipSum(final Outcome slip, final Ref ref) {
        if (!(slip.changes().get(0) instanceof Change.AtLine change)) {
            return Optional.empty();
        }
        final double[] gone =
                SlipFigures.carriedOn(worked, ref, SlipFigures.nothingPinned(worked.plan()))
                        .run(slip.changes());
        final boolean fromTheGivens =
                gone[worked.plan().placeOf(ref).orElseThrow()] == slip.value();
        final Ref line = lineOf(change);
        return Optional.of(Telling.slipNumbers(worked.plan(), change.at().slip(), line, gone))
                .filter(sum -> fromTheGivens && PlainLines.hasResult(sum))
                .map(
                        sum ->
                                line.equals(ref)
                                        ? text("here", PlainLines.sum(sum))
                                        : text("here.before", sum)
                                                .replace("{line}", lines.name(line)));
    }

    private static String text(final String key, final String numbers) {
        return MARKS.getString(key).replace("{numbers}", numbers);
    }

    /** With what to do, where both together stay short. */
    private static String withinLimit(final String why, final String todo) {
        return PlainLines.fits(why + todo) ? why + todo : why;
    }

    private String pair(final List<Outcome> explained) {
        final Outcome first = explained.get(0);
        if (explained.size() > 1) {
            final String two = either(explained.subList(0, 2), "or-else");
            return withinLimit(
                    MARKS.getString("pairs").replace("{either}", two),
                    " " + MARKS.getString("pairs.do"));
        }
        return MARKS.getString("pair")
                .replace("{first}", clause(first.changes().get(0)))
                .replace("{second}", clause(first.changes().get(1)))
                .replace("{line}", lines.name(lineOf(first.changes().get(0))));
    }

    /** "A, B or C" with the given last joint. */
    private String either(final List<Outcome> explained, final String joint) {
        final List<String> ways =
                explained.stream()
                        .map(Explaining::clauses)
                        .distinct()
                        .limit(MOST_ALTERNATIVES)
                        .toList();
        final int last = ways.size() - 1;
        final String first = String.join(MARKS.getString("comma"), ways.subList(0, last));
        return last == 0 ? ways.get(0) : first + MARKS.getString(joint) + ways.get(last);
    }

    private static String clauses(final Outcome outcome) {
        return outcome.changes().stream()
                .map(Explaining::clause)
                .collect(Collectors.joining(MARKS.getString("and")));
    }

    private static String clause(final Change change) {
        return SLIPS.getString(change.id() + ".short");
    }

    private Ref lineOf(final Change change) {
        return worked.plan()
                .at(
                        change instanceof Change.Misread misread
                                ? misread.place()
                                : worked.plan().steps().get(change.line()).output());
    }

    private static String text(final Check check) {
        String text = MARKS.getString(check.key());
        for (final Map.Entry<String, String> place : check.places().entrySet()) {
            text = text.replace(place.getKey(), place.getValue());
        }
        return check.unit().isEmpty()
                ? text
                : text.replace("{unit}", MARKS.getString("unit." + check.unit()));
    }

    private static String fill(
            final String text, final Ref ref, final Reading.Read read, final double right) {
        return text.replace("{figure}", figure(ref, read))
                .replace("{right}", Telling.result(ref.quantity(), right))
                .replace("{quantity}", ref.quantity().words());
    }

    private static String figure(final Ref ref, final Reading.Read read) {
        final int digits = Math.max(1, Math.min(read.significantDigits(), 8));
        return read.unitTyped()
                ? read.text()
                : FigureText.of(read.value(), ref.quantity().dimension(), digits);
    }
}
