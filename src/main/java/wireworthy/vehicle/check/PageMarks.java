package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wireworthy.marking.Diagnosis;
import wireworthy.marking.Evidence;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.marking.Onward;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/**
 * Marks a builder's own figures. What stands on a page can't be asked about. It is rounded as
 * people round, and may go by another published resistivity of copper than this program: neither is
 * a slip. What follows from an earlier figure is no mistake of its own.
 */
final class PageMarks {

    /** Digits enough for another figure for copper to be no chance. */
    private static final int SHOWING = 3;

    /** Read off rather than worked on with: one digit is enough. */
    private static final Set<Quantity> NOT_WORKED_ON = EnumSet.of(DROP_PERCENT);

    private final CopperFigures figures;
    private final Worked worked;
    private final List<Mark> before = new ArrayList<>();

    /** The other figure for copper that one of the page shows it goes by. */
    private Optional<Reading.Read> used = Optional.empty();

    private PageMarks(final Solver solver, final Worked worked) {
        this.figures = new CopperFigures(solver, worked);
        this.worked = worked;
    }

    /** The marks of all figures that stand on the way, in the order of the working. */
    static List<Mark> of(final Solver solver, final Worked worked) {
        final PageMarks page = new PageMarks(solver, worked);
        Marker.marks(worked, Evidence.PAGE).stream()
                .map(page::reconsidered)
                .forEach(page.before::add);
        return List.copyOf(page.before);
    }

    private Mark reconsidered(final Mark mark) {
        if (mark.asksBack()) {
            return mark;
        }
        final Optional<Unworkable> why = worked.problem(mark.ref().quantity());
        if (why.isPresent() && worked.value(mark.ref()).isEmpty()) {
            return unworkable(mark, why.get());
        }
        final OwnRounding rounding = new OwnRounding(new Onward(worked, before), mark);
        if (mark.isSound()) {
            return rounding.toTheDigit() ? mark : toTheDigit(mark, false).orElse(mark);
        }
        final boolean follows = onward().followsFromUnsound(mark.ref());
        if (mark.follows() && follows) {
            return mark;
        }
        if (mark.follows() || rounding.holds(follows)) {
            return follows
                    ? following(mark, "own.follows", "")
                    : sound(mark, rounded(mark, rounding));
        }
        if (rounding.coarse()) {
            return NOT_WORKED_ON.contains(mark.ref().quantity())
                    ? sound(mark, said(mark, "rounded"))
                    : coarse(mark, rounding.value());
        }
        final Optional<String> energy = new EnergySlips(worked, mark).said();
        if (energy.isPresent()) {
            return other(mark, mark.sound(), false, Diagnosis.NONE, energy.get());
        }
        final Mark seen = used.flatMap(any -> copper(mark).by(used, Evidence.PAGE)).orElse(mark);
        final Mark known = seen.isSound() ? seen : byOtherCopper(seen, follows, rounding);
        return unexplained(known) && !known.isSound()
                ? new LoopTwice(onward(), copper(known)).told().orElseGet(() -> opened(known))
                : new HalfTheTime(worked, known).told();
    }

    /** Looked at once more, with the lines that are sound only as they stand on a page. */
    private Mark opened(final Mark mark) {
        if (mark.diagnosis().open().isEmpty()) {
            return mark;
        }
        final Set<Ref> sound =
                before.stream().filter(Mark::isSound).map(Mark::ref).collect(Collectors.toSet());
        return copper(mark)
                .by(used, Evidence.page(sound))
                .filter(PageMarks::unexplained)
                .orElse(mark);
    }

    private static Mark unworkable(final Mark mark, final Unworkable why) {
        return mark.inQuestion(
                Said.of("own.nothing", "figure", mark.understood(), "why", InWords.of(why)));
    }

    /** Right with the figure above it rather than in full, or rounded. */
    private String rounded(final Mark mark, final OwnRounding rounding) {
        return onward().last(mark.ref())
                .filter(any -> rounding.onlyWithThoseAbove())
                .map(
                        last ->
                                Said.of(
                                        "own.sound-with",
                                        "figure",
                                        mark.understood(),
                                        "earlier",
                                        last.understood()))
                .orElseGet(() -> said(mark, "rounded"));
    }

    private static Mark coarse(final Mark mark, final double value) {
        final String right = Telling.exact(mark.ref().quantity(), value);
        final String words = Said.of("own.coarse", "figure", mark.understood(), "right", right);
        return mark.inQuestion(words);
    }

    private Onward onward() {
        return new Onward(worked, before);
    }

    private static String said(final Mark mark, final String key) {
        return Said.of("own." + key, "figure", mark.understood());
    }

    private static Mark sound(final Mark mark, final String words) {
        return other(mark, Optional.of(true), true, Diagnosis.NONE, words);
    }

    /** Right as worked on from an earlier figure; which, and what it comes to without that. */
    private Mark following(final Mark mark, final String key, final String copper) {
        final Ref ref = mark.ref();
        final String words =
                Said.of(
                        key,
                        "figure",
                        mark.understood(),
                        "earlier",
                        onward().lastUnsound(ref).map(Mark::understood).orElse(""),
                        "copper",
                        copper,
                        "right",
                        right(worked, ref));
        return mark.following(fire(mark).map(first -> first + " " + words).orElse(words));
    }

    /** What could start a fire is said first, whatever the figure follows from. */
    private Optional<String> fire(final Mark mark) {
        return mark.reading() instanceof Reading.Read read
                ? Marker.fire(worked, mark.ref(), read)
                : Optional.empty();
    }

    /** A figure to the last digit before a slip, a slip before what is but near. */
    private Mark byOtherCopper(final Mark mark, final boolean follows, final OwnRounding rounding) {
        return toTheDigit(mark, follows)
                .or(() -> rounding.leavesOpen() ? copper(mark).near() : Optional.empty())
                .or(
                        () ->
                                used.isEmpty() && unexplained(mark) && rounding.says()
                                        ? copper(mark).slip()
                                        : Optional.empty())
                .orElse(mark);
    }

    private Optional<Mark> toTheDigit(final Mark mark, final boolean follows) {
        final Optional<Reading.Read> taken = copper(mark).toTheDigit(follows);
        if (used.isEmpty() && mark.showsDigits(SHOWING)) {
            used = taken;
        }
        return taken.map(each -> toTheDigit(mark, follows, each));
    }

    private OtherCopper copper(final Mark mark) {
        return new OtherCopper(figures, onward(), mark);
    }

    private static boolean unexplained(final Mark mark) {
        return mark.explained().isEmpty();
    }

    private Mark toTheDigit(
            final Mark mark, final boolean follows, final Reading.Read resistivity) {
        return follows
                ? following(mark, "own.follows.copper", resistivity.text())
                : OtherCopper.saying(
                        sound(mark, said(mark, "sound")), "other-copper.sound", resistivity);
    }

    private static String right(final Worked worked, final Ref ref) {
        return Telling.exact(ref.quantity(), worked.value(ref).orElse(Double.NaN));
    }

    private static Mark other(
            final Mark mark,
            final Optional<Boolean> sound,
            final boolean follows,
            final Diagnosis diagnosis,
            final String words) {
        return new Mark(mark.ref(), mark.given(), mark.reading(), sound, follows, diagnosis, words);
    }
}
