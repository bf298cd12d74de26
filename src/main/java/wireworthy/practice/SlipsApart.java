package wireworthy.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import wireworthy.facts.CableTable;
import wireworthy.facts.StandardSizes;
import wireworthy.marking.Change;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.rules.Dimension;
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
    private static final double LIKE_A_GIVEN = 0.005;
    private static final double FROM_A_SIZE = 0.05;
    private static final int THIRD_FIGURE = 2;

    private final Worked worked;
    private final Ref asked;
    private final double right;
    private final List<Outcome> slips;

    private SlipsApart(final Worked worked, final Ref asked) {
        this.worked = worked;
        this.asked = asked;
        this.right = worked.value(asked).orElse(Double.NaN);
        this.slips = SlipFigures.of(worked, asked);
    }

    /** How many pairs of figures come too near to each other; 0 for numbers to be taken. */
    static int clashes(final Worked worked, final Ref asked) {
        final SlipsApart apart = new SlipsApart(worked, asked);
        // A choice from a row of sizes comes out the same for many slips: that can't be helped.
        final int slips = asked.quantity().chosen() ? 0 : apart.amongSlips() + apart.withGivens();
        return slips + apart.nearSizes();
    }

    private int amongSlips() {
        final List<Integer[]> near = new ArrayList<>();
        for (int i = -1; i < slips.size(); i++) {
            for (int j = i + 1; j < slips.size(); j++) {
                if (near(i, j)) {
                    near.add(new Integer[] {i, j});
                }
            }
        }
        if (near.isEmpty()) {
            return 0;
        }
        final SlipsApart moved = moved();
        return (int) near.stream().filter(pair -> !twins(pair[0], pair[1], moved)).count();
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
        final double figure = Math.pow(10, Math.floor(Math.log10(Math.abs(right))) - THIRD_FIGURE);
        final double shown = right == 0 ? 0 : figure / Math.abs(right);
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

    /** The same question with each given moved a little, by which chance twins come apart. */
    private SlipsApart moved() {
        final Map<Ref, Reading.Read> figures = new LinkedHashMap<>();
        for (final Map.Entry<Ref, Reading.Read> given : worked.question().figures().entrySet()) {
            final double factor = 1 + 0.0123 / (1 + figures.size());
            figures.put(given.getKey(), moved(given.getValue(), factor));
        }
        final Question old = worked.question();
        final Question question =
                new Question(
                        figures, old.names(), old.loads(), old.available(), old.find(), Map.of());
        final double[] givens =
                figures.values().stream().mapToDouble(Reading.Read::value).toArray();
        final double[] values = worked.plan().run(worked.plan().start(givens));
        return new SlipsApart(new Worked(question, worked.plan(), values, Map.of()), asked);
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

    private int withGivens() {
        return (int)
                slips.stream()
                        .flatMap(
                                slip ->
                                        worked.question().figures().keySet().stream()
                                                .filter(given -> looksLike(slip, given)))
                        .count();
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

    /**
     * How many figures on the way lie close enough to a standard size to be taken to the wrong one.
     */
    private int nearSizes() {
        return (int)
                worked.wayTo(asked).stream()
                        .map(Step::output)
                        .map(worked.plan()::at)
                        .filter(ref -> !ref.equals(asked))
                        .filter(ref -> TAKEN_TO_A_SIZE.contains(ref.quantity()))
                        .filter(ref -> nearSize(ref, worked.value(ref).orElse(Double.NaN)))
                        .count();
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
