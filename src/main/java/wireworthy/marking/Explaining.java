package wireworthy.marking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.texts.TextBundle;
import wireworthy.working.Danger;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Puts a mark into words: the learner's figure first, then the line, then what to do. */
final class Explaining {
    private static final TextBundle MARKS = new TextBundle("marks");

    /** A number and its unit, in whose place one word stands. */
    private static final String FIGURE = " 0 A";

    private static final double BELIEVED = 5;

    /** Slips whose sum as it stands would not give the unit of the line. */
    private static final Set<String> UNFINISHED = Set.of("fraction-for-percent");

    private final Worked worked;
    private final PlainLines lines;
    private final SlipWords slips;
    private final Alternatives alternatives;

    /**
     * @param asking whether a line can be asked for: not of a page
     */
    Explaining(final Worked worked, final boolean asking) {
        this.worked = worked;
        this.lines = new PlainLines(worked, asking);
        this.slips = new SlipWords(worked);
        this.alternatives = new Alternatives(worked, lines, slips, asking);
    }

    String sound(final Ref ref, final Reading.Read read, final double right) {
        final boolean larger =
                ref.quantity().chosen() && Math.abs(read.value() - right) > 1e-6 * right;
        return fill(MARKS.of(larger ? largerKey(ref) : "sound"), ref, read, right);
    }

    /** What is said where there is no more to say. */
    static String plainlySound(final Ref ref, final Reading.Read read) {
        return fill(MARKS.of("sound"), ref, read, read.value());
    }

    private static String largerKey(final Ref ref) {
        return ref.quantity() == Quantity.FUSE ? "sound.fuse" : "sound.larger";
    }

    String negative(final Ref ref, final Reading.Read read) {
        return fill(MARKS.of("negative"), ref, read, read.value());
    }

    String roundedEarly(final Ref ref, final Reading.Read read, final double right) {
        return fill(MARKS.of("rounded-early"), ref, read, right);
    }

    String followed(
            final Ref ref,
            final Reading.Read read,
            final double right,
            final Optional<Dangers> danger,
            final Optional<Map.Entry<Ref, Reading.Read>> earlier) {
        final String none = Double.isNaN(right) ? ".none" : "";
        final String text =
                earlier.map(it -> figure(it.getKey(), it.getValue()))
                        .map(it -> MARKS.of("follows.from" + none).replace("{earlier}", it))
                        .orElseGet(() -> MARKS.of("follows" + none));
        return fill(withDanger(text, danger.filter(Explaining::fire), true), ref, read, right);
    }

    String unsound(
            final Ref ref,
            final Reading.Read read,
            final double right,
            final Diagnosis found,
            final Optional<Dangers> danger) {
        final Optional<Dangers> worth = danger.filter(d -> worthSaying(d, read, right));
        final boolean settled = found.ask().isEmpty();
        if (!found.explained().isEmpty() && !plainlyWrong(found, ref, read)) {
            return fill(withDanger(known(found, ref, read), worth, settled), ref, read, right);
        }
        final Optional<Check> check = Checks.first(worked, ref, read, right);
        final String why = check.map(Explaining::text).orElseGet(() -> lines.unknown(found, ref));
        final String asked = check.isPresent() ? lines.question(found, ref) : "";
        final Optional<Dangers> said = check.isPresent() ? worth.filter(Explaining::fire) : worth;
        return fill(withDanger(why + asked, said, settled), ref, read, right);
    }

    /** A choice out of bounds is that, rather than one of several slips further up. */
    private boolean plainlyWrong(final Diagnosis found, final Ref ref, final Reading.Read read) {
        return found.ask().isEmpty()
                && found.explained().size() > 1
                && ref.quantity().chosen()
                && Choices.check(worked, ref, read).isPresent();
    }

    /** What it costs is not said of a figure that nobody would buy for. */
    private static boolean worthSaying(
            final Dangers danger, final Reading.Read read, final double right) {
        return danger.danger() != Danger.COSTS_MONEY
                || Checks.timesOff(read.value(), right) < BELIEVED;
    }

    /** The warning of a figure that could start a fire; empty for another. */
    static Optional<String> fire(final Worked worked, final Ref ref, final Reading.Read read) {
        final double right = worked.value(ref).orElse(Double.NaN);
        return Dangers.of(worked, ref.quantity(), read.value(), right)
                .filter(Explaining::fire)
                .map(danger -> fill(danger.told(), ref, read, right));
    }

    private static boolean fire(final Dangers danger) {
        return danger.danger() == Danger.FIRE;
    }

    /**
     * What could start a fire is said before all else.
     *
     * @param settled whether the sound figure may be told: not while a line is asked for
     */
    private static String withDanger(
            final String why, final Optional<Dangers> danger, final boolean settled) {
        final String warning = danger.map(d -> settled ? d.told() : d.withoutAnswer()).orElse("");
        return danger.filter(Explaining::fire).isPresent()
                ? warning + " " + why
                : (why + " " + warning).strip();
    }

    private String known(final Diagnosis found, final Ref ref, final Reading.Read read) {
        final List<Outcome> explained = found.told();
        final Outcome first = explained.get(0);
        if (found.ask().isPresent()) {
            return MARKS.of("to-be-sure").replace("{either}", alternatives.either(explained))
                    + lines.toBeSure(found);
        }
        if (first.changes().size() > 1 && !first.isAlike()) {
            return alternatives.pair(explained);
        }
        if (explained.size() > 1) {
            return alternatives.several(explained, ref, read);
        }
        final Change only = first.changes().get(0);
        return single(first, ref, slips.say(only, read), " " + slips.todo(only, read));
    }

    /** With the sum that went wrong in the numbers of the question, where there is room for it. */
    private String single(final Outcome slip, final Ref ref, final String say, final String todo) {
        return slipSum(slip, ref)
                .map(sum -> say + MARKS.of(here(slip, ref)).replace("{numbers}", sum) + todo)
                .filter(text -> PlainLines.fits(text + FIGURE))
                .orElse(say + todo);
    }

    /** A sum further up ends in another figure than the learner's. */
    private String here(final Outcome slip, final Ref ref) {
        return lineOf(slip.changes().get(0)).equals(ref) ? "here" : "here.on";
    }

    /** At the asked line without what it comes to, which is the learner's figure. */
    private Optional<String> slipSum(final Outcome slip, final Ref ref) {
        if (slip.isAlike() || !(slip.changes().get(0) instanceof Change.AtLine change)) {
            return Optional.empty();
        }
        final double[] gone =
                SlipFigures.carriedOn(worked, ref, SlipFigures.nothingPinned(worked.plan()))
                        .run(slip.changes());
        final boolean fromTheGivens =
                gone[worked.plan().placeOf(ref).orElseThrow()] == slip.value();
        final String sum =
                Telling.slipNumbers(worked.plan(), change.at().slip(), lineOf(change), gone);
        return Optional.of(sum)
                .filter(told -> fromTheGivens && PlainLines.hasResult(told))
                .filter(told -> !UNFINISHED.contains(change.id()))
                .map(told -> lineOf(change).equals(ref) ? PlainLines.sum(told) : told);
    }

    private Ref lineOf(final Change change) {
        return SlipWords.lineOf(worked, change);
    }

    private static String text(final Check check) {
        String text = MARKS.of(check.key());
        for (final Map.Entry<String, String> place : check.places().entrySet()) {
            text = text.replace(place.getKey(), place.getValue());
        }
        return check.unit().isEmpty()
                ? text
                : text.replace("{unit}", MARKS.of("unit." + check.unit()));
    }

    private static String fill(
            final String text, final Ref ref, final Reading.Read read, final double right) {
        return text.replace("{figure}", figure(ref, read))
                .replace("{right}", Telling.exact(ref.quantity(), right))
                .replace("{quantity}", ref.quantity().words());
    }

    private static String figure(final Ref ref, final Reading.Read read) {
        final int digits = Math.max(1, Math.min(read.significantDigits(), 8));
        return read.unitTyped()
                ? read.text()
                : FigureText.of(read.value(), ref.quantity().dimension(), digits);
    }
}
