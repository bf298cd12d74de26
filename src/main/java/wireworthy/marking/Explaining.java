package wireworthy.marking;

import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Line;
import wireworthy.working.Step;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Puts a mark into words: the learner's figure first, then the line, then what to do. */
final class Explaining {
    private static final ResourceBundle SLIPS = ResourceBundle.getBundle("wireworthy.texts.slips");
    private static final ResourceBundle DANGERS =
            ResourceBundle.getBundle("wireworthy.texts.dangers");
    private static final ResourceBundle MARKS = ResourceBundle.getBundle("wireworthy.texts.marks");

    private final Worked worked;

    Explaining(final Worked worked) {
        this.worked = worked;
    }

    String sound(final Ref ref, final Reading.Read read, final double right) {
        final boolean larger =
                ref.quantity().chosen() && Math.abs(read.value() - right) > 1e-6 * right;
        return fill(MARKS.getString(larger ? largerKey(ref) : "sound"), ref, read, right);
    }

    String negative(final Ref ref, final Reading.Read read) {
        return fill(MARKS.getString("negative"), ref, read, read.value());
    }

    private static String largerKey(final Ref ref) {
        return ref.quantity() == Quantity.FUSE ? "sound.fuse" : "sound.larger";
    }

    String followed(final Ref ref, final Reading.Read read, final double right) {
        return fill(MARKS.getString("follows"), ref, read, right);
    }

    String roundedEarly(final Ref ref, final Reading.Read read, final double right) {
        return fill(MARKS.getString("rounded-early"), ref, read, right);
    }

    String unsound(
            final Ref ref,
            final Reading.Read read,
            final double right,
            final List<Outcome> explained,
            final Optional<Dangers> danger,
            final Optional<Ref> ask) {
        final String warning =
                danger.map(d -> fill(DANGERS.getString(d.key()), ref, read, right)).orElse("");
        final boolean fire =
                danger.filter(d -> d.danger() == wireworthy.working.Danger.FIRE).isPresent();
        final String why =
                explained.isEmpty()
                        ? unknown(ref, read, right, ask)
                        : known(ref, read, right, explained);
        return (fire ? warning + " " + why : why + " " + warning).strip();
    }

    private String known(
            final Ref ref,
            final Reading.Read read,
            final double right,
            final List<Outcome> explained) {
        final String first = explained.get(0).changes().get(0).id();
        if (explained.size() == 1) {
            return fill(
                    SLIPS.getString(first + ".say") + " " + SLIPS.getString(first + ".do"),
                    ref,
                    read,
                    right);
        }
        final String either =
                explained.stream()
                        .limit(3)
                        .map(outcome -> SLIPS.getString(outcome.changes().get(0).id() + ".short"))
                        .distinct()
                        .collect(Collectors.joining(MARKS.getString("or")));
        return fill(
                MARKS.getString("either").replace("{either}", either)
                        + " "
                        + SLIPS.getString(first + ".do"),
                ref,
                read,
                right);
    }

    /** No slip is known: what its size tells, else where the working begins. */
    private String unknown(
            final Ref ref, final Reading.Read read, final double right, final Optional<Ref> ask) {
        if (ask.isPresent()) {
            final String text =
                    MARKS.getString("ask").replace("{line}", ask.orElseThrow().quantity().words());
            return fill(text, ref, read, right);
        }
        final List<Step> way = worked.wayTo(ref);
        final Line line = Telling.line(worked, way.get(0), worked.values());
        final String text =
                MARKS.getString("unknown")
                        .replace("{formula}", line.formula())
                        .replace("{numbers}", line.numbers());
        return fill(text, ref, read, right);
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
