package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    /** What grows with the length of the loop. */
    private static final Set<Quantity> OF_THE_LOOP =
            EnumSet.of(LOOP_LENGTH, LOOP_RESISTANCE, DROP, DROP_PERCENT);

    private final CopperFigures figures;
    private final Worked worked;
    private final List<Mark> before = new ArrayList<>();

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
                    : sound(mark, said(mark, "rounded"));
        }
        if (rounding.coarse()) {
            return coarse(mark, rounding.value());
        }
        final Optional<String> energy = new EnergySlips(worked, mark).said();
        if (energy.isPresent()) {
            return other(mark, mark.sound(), false, Diagnosis.NONE, energy.get());
        }
        final Mark known = byOtherCopper(mark, follows, rounding);
        return unexplained(known) ? doubled(known).orElseGet(() -> opened(known)) : known;
    }

    /** Looked at once more, with the lines that are sound only as they stand on a page. */
    private Mark opened(final Mark mark) {
        if (mark.diagnosis().open().isEmpty()) {
            return mark;
        }
        final Set<Ref> sound =
                before.stream().filter(Mark::isSound).map(Mark::ref).collect(Collectors.toSet());
        return Marker.marks(worked, Evidence.page(sound)).stream()
                .filter(other -> other.ref().equals(mark.ref()))
                .filter(other -> unexplained(other))
                .findFirst()
                .orElse(mark);
    }

    private static Mark unworkable(final Mark mark, final Unworkable why) {
        return mark.inQuestion(
                Said.of("own.nothing", "figure", mark.understood(), "why", InWords.of(why)));
    }

    private static Mark coarse(final Mark mark, final double value) {
        final String right = Telling.exact(mark.ref().quantity(), value);
        final String words = Said.of("own.coarse", "figure", mark.understood(), "right", right);
        return mark.inQuestion(words);
    }

    /** Twice what comes out, by whichever copper: the loop was doubled once more. */
    private Optional<Mark> doubled(final Mark mark) {
        return Stream.concat(Stream.of(worked), copper(mark).others())
                .filter(any -> OF_THE_LOOP.contains(mark.ref().quantity()) && !loopStands(mark))
                .filter(it -> mark.isRounded(2 * onward().in(it).value(mark.ref())))
                .findFirst()
                .map(any -> said(mark, "doubled"))
                .map(words -> other(mark, mark.sound(), false, mark.diagnosis(), words));
    }

    /** Whether a figure of the loop stands above, from which this one was to be worked. */
    private boolean loopStands(final Mark mark) {
        return before.stream()
                .filter(it -> it.isSound() || it.follows())
                .map(Mark::ref)
                .filter(it -> OF_THE_LOOP.contains(it.quantity()))
                .anyMatch(it -> onward().leadsTo(it, mark.ref()));
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
                                unexplained(mark) && rounding.says()
                                        ? copper(mark).slip()
                                        : Optional.empty())
                .orElse(mark);
    }

    private Optional<Mark> toTheDigit(final Mark mark, final boolean follows) {
        return copper(mark).toTheDigit(follows).map(each -> toTheDigit(mark, follows, each));
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
