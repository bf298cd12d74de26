package wireworthy.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import wireworthy.facts.CableTable;
import wireworthy.facts.StandardSizes;
import wireworthy.marking.Change;
import wireworthy.marking.Marker;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;
import wireworthy.working.Question;
import wireworthy.working.Step;
import wireworthy.working.Worked;

/**
 * Whether the numbers of a problem keep its slips apart, so that a wrong figure tells which slip it
 * was: each slip's figure from the right one, from every other slip's and from the givens. Slips
 * that give the same figure whatever the numbers are twins and allowed.
 */
final class SlipsApart {
    /** Relative distance at which typed figures of three digits never meet. */
    private static final double APART = 0.015;

    private static final double SOUND = 0.01;
    private static final double SAME = 1e-9;

    /** How far a marked figure may be off a slip's, beside its last digit. */
    private static final double MARKING = 0.001;

    private static final double LIKE_A_GIVEN = 0.005;
    private static final double FROM_A_SIZE = 0.05;
    private static final int THIRD_FIGURE = 2;

    private final Worked worked;
    private final Ref asked;
    private final double right;
    private final List<Outcome> slips;
    private final List<String> near = new ArrayList<>();
    private final List<String> confused = new ArrayList<>();

    private SlipsApart(final Worked worked, final Ref asked) {
        this.worked = worked;
        this.asked = asked;
        this.right = worked.value(asked).orElse(Double.NaN);
        this.slips = SlipFigures.of(worked, asked);
    }

    /**
     * What comes too near to what; nothing for numbers to be taken.
     *
     * @param varied the givens whose figures are drawn from a range
     */
    static Closeness of(final Worked worked, final Ref asked, final Set<Ref> varied) {
        final SlipsApart apart = new SlipsApart(worked, asked);
        // A choice from a row of sizes comes out the same for many slips: that can't be helped.
        if (!asked.quantity().chosen()) {
            apart.amongSlips(varied);
            apart.withGivens();
        }
        apart.nearSizes();
        apart.choiceByRounding();
        return new Closeness(apart.near, apart.confused);
    }

    private void amongSlips(final Set<Ref> varied) {
        Optional<SlipsApart> moved = Optional.empty();
        for (int i = -1; i < slips.size(); i++) {
            for (int j = i + 1; j < slips.size(); j++) {
                if (!near(i, j)) {
                    continue;
                }
                moved = moved.or(() -> Optional.of(moved(varied)));
                if (!twins(i, j, moved.orElseThrow())) {
                    add(name(i) + " and " + name(j), confused(i, j));
                }
            }
        }
    }

    private void add(final String what, final boolean confusing) {
        near.add(what);
        if (confusing) {
            confused.add(what);
        }
    }

    /** Whether the figure of one of them, typed in three digits, would pass for the other. */
    private boolean confused(final int one, final int other) {
        if (one >= 0) {
            return passes(figure(one), figure(other)) || passes(figure(other), figure(one));
        }
        final String typed = FigureText.of(figure(other), asked.quantity().dimension());
        return Marker.mark(worked, asked, typed).isSound();
    }

    private static boolean passes(final double typed, final double slip) {
        final double unit = thirdFigure(typed);
        final double rounded = Math.rint(typed / unit) * unit;
        return Math.abs(rounded - slip) <= unit / 2 + MARKING * Math.abs(slip);
    }

    private static double thirdFigure(final double value) {
        return Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - THIRD_FIGURE);
    }

    private String name(final int slip) {
        return slip < 0 ? "the right answer" : slips.get(slip).ids().get(0);
    }

    /** The figure of a slip; the right one at -1. */
    private double figure(final int slip) {
        return slip < 0 ? right : slips.get(slip).value();
    }

    private boolean near(final int one, final int other) {
        final double wanted = one < 0 ? fromRight() : APART;
        return distance(figure(one), figure(other)) < wanted;
    }

    /** Past what counts as right, and past the rounding of a slip's figure back towards it. */
    private double fromRight() {
        final double shown = right == 0 ? 0 : thirdFigure(right) / Math.abs(right);
        return Math.max(APART, SOUND + shown);
    }

    /** Relative to the larger; not a number where one of them has no figure. */
    private static double distance(final double one, final double other) {
        return Math.abs(one - other) / Math.max(Math.abs(one), Math.abs(other));
    }

    private boolean twins(final int one, final int other, final SlipsApart moved) {
        return distance(figure(one), figure(other)) < SAME
                && distance(moved.figure(one), moved.figure(other)) < SAME;
    }

    /** The same question with each varied given moved a little, which parts chance twins. */
    private SlipsApart moved(final Set<Ref> varied) {
        final Map<Ref, Reading.Read> figures = new LinkedHashMap<>(worked.question().figures());
        double share = 0.0123;
        for (final Map.Entry<Ref, Reading.Read> given : figures.entrySet()) {
            if (varied.contains(given.getKey())) {
                given.setValue(moved(given.getValue(), 1 + share));
                share *= 0.77;
            }
        }
        return new SlipsApart(again(figures), asked);
    }

    private Worked again(final Map<Ref, Reading.Read> figures) {
        final Question old = worked.question();
        final Question question =
                new Question(
                        figures, old.names(), old.loads(), old.available(), old.find(), Map.of());
        final double[] givens =
                figures.values().stream().mapToDouble(Reading.Read::value).toArray();
        final double[] values = worked.plan().run(worked.plan().start(givens));
        return new Worked(question, worked.plan(), values, Map.of());
    }

    private static Reading.Read moved(final Reading.Read read, final double factor) {
        return new Reading.Read(
                read.value() * factor,
                read.unit(),
                read.text(),
                read.lastDigit(),
                read.significantDigits(),
                read.unitTyped());
    }

    private void withGivens() {
        for (final Outcome slip : slips) {
            worked.question().figures().keySet().stream()
                    .filter(given -> looksLike(slip, given))
                    .map(given -> slip.ids().get(0) + " and the given " + given.quantity().id())
                    .forEach(near::add);
        }
    }

    /** Whether the figure of a slip shows the same number as a given that it does not use. */
    private boolean looksLike(final Outcome slip, final Ref given) {
        final double number = shown(slip.value(), asked.quantity());
        final double other = shown(worked.value(given).orElse(Double.NaN), given.quantity());
        return distance(number, other) < LIKE_A_GIVEN && !uses(slip.changes().get(0), given);
    }

    private static double shown(final double si, final Quantity quantity) {
        return si / quantity.dimension().scale();
    }

    private boolean uses(final Change change, final Ref given) {
        if (change instanceof Change.AtLine line) {
            return line.at().slip().formula().inputs().contains(given);
        }
        return change instanceof Change.Misread misread
                && worked.plan().at(misread.place()).equals(given);
    }

    private static final Set<Quantity> TAKEN_TO_A_SIZE =
            Set.of(Quantity.FUSE_FLOOR, Quantity.SECTION_FOR_DROP);

    /** Figures on the way that lie so close to a standard size that rounding decides. */
    private void nearSizes() {
        worked.wayTo(asked).stream()
                .map(Step::output)
                .map(worked.plan()::at)
                .filter(ref -> !ref.equals(asked))
                .filter(ref -> TAKEN_TO_A_SIZE.contains(ref.quantity()))
                .filter(ref -> nearSize(ref, worked.value(ref).orElse(Double.NaN)))
                .map(ref -> ref.quantity().id() + " and a standard size")
                .forEach(what -> add(what, true));
    }

    /** A choice that sums in three figures would turn is none to ask for. */
    private void choiceByRounding() {
        final double rounded = SlipFigures.inThreeFigures(worked, asked);
        if (asked.quantity().chosen() && distance(rounded, right) > SAME) {
            add("the choice and its neighbour", true);
        }
    }

    private boolean nearSize(final Ref ref, final double value) {
        return !size(ref, value * (1 - FROM_A_SIZE)).equals(size(ref, value * (1 + FROM_A_SIZE)));
    }

    private OptionalDouble size(final Ref ref, final double value) {
        final Setting setting = worked.plan().setting();
        return ref.quantity() == Quantity.FUSE_FLOOR
                ? setting.ratingFor(value)
                : StandardSizes.atOrAbove(sections(setting), value / Dimension.AREA.scale());
    }

    private static List<Double> sections(final Setting setting) {
        return setting.available().isEmpty()
                ? setting.table().usableRows().stream().map(CableTable.Row::sectionMm2).toList()
                : setting.available();
    }
}
