package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.facts.CableTable;
import wireworthy.rules.Dimension;
import wireworthy.rules.Direction;
import wireworthy.rules.Direction.Reading;
import wireworthy.rules.FigureText;
import wireworthy.rules.Formula;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading.Read;
import wireworthy.rules.Ref;
import wireworthy.rules.Slip;
import wireworthy.texts.TextBundle;

/** Tells the lines of a working in words and numbers. */
public final class Telling {
    private static final TextBundle TEXTS = new TextBundle("working");

    private static final int IN_WORKINGS = 4;
    private static final int RESULT = 3;
    private static final int EXACT = 6;
    private static final String CELSIUS = " °C";

    private Telling() {}

    /** The lines that are told: those that only carry a value over are told where asked for. */
    public static List<Line> lines(final Worked worked) {
        final List<Line> lines = new ArrayList<>();
        for (final Step step : worked.plan().steps()) {
            if (told(step.direction(), worked.question())) {
                lines.add(line(worked, step, worked.values()));
            }
        }
        return lines;
    }

    /** The lines told on the way to a value; it is the last, even if it only carries one over. */
    public static List<Step> way(final Worked worked, final Ref asked) {
        return worked.wayTo(asked).stream()
                .filter(
                        step ->
                                step.direction().reading() != Reading.CARRIED
                                        || step.direction().output().equals(asked))
                .toList();
    }

    private static boolean told(final Direction direction, final Question question) {
        return direction.reading() != Reading.CARRIED
                || question.find().contains(direction.output().quantity())
                || question.answers().containsKey(direction.output().quantity());
    }

    /** One line, told with the given values. */
    public static Line line(final Worked worked, final Step step, final double[] values) {
        final Direction direction = step.direction();
        final Ref ref = direction.output();
        final double value = values[step.output()];
        return new Line(
                ref,
                worked.question().subject(ref),
                direction.rule(),
                ref.quantity().words() + " = " + words(direction.formula(), ref, worked.question()),
                numbers(worked.plan(), direction.formula(), values, ref, value),
                value,
                direction.source().apply(worked.plan().setting()),
                note(worked, step));
    }

    /**
     * A given turned into the unit one works in, as a line: "1400 mΩ = 1.4 Ω".
     *
     * @param value SI; what the given is taken for
     * @param formula in words
     */
    public static Line given(
            final Worked worked, final Ref ref, final double value, final String formula) {
        return new Line(
                ref,
                worked.question().subject(ref),
                "given",
                formula,
                worked.typed(ref).map(Read::inItsOwnUnit).orElse("")
                        + " = "
                        + FigureText.inFieldUnit(value, ref.quantity().dimension(), EXACT),
                value,
                Optional.empty(),
                "");
    }

    /** The numbers of a line gone wrong. */
    public static String slipNumbers(
            final Plan plan, final Slip slip, final Ref ref, final double[] values) {
        final double value = plan.value(ref, values);
        return numbers(plan, slip.formula(), values, ref, value);
    }

    /** A load is named where it is not the one that the line is about; so is no unit. */
    private static String words(final Formula formula, final Ref about, final Question question) {
        final String own = question.subject(about);
        return formula.fill(
                        ref -> {
                            final String subject = question.subject(ref);
                            final String words = ref.quantity().words();
                            return subject.isEmpty() || subject.equals(own)
                                    ? words
                                    : TEXTS.of("of-load", "what", words, "load", subject);
                        })
                .replace(CELSIUS, "");
    }

    private static String numbers(
            final Plan plan,
            final Formula formula,
            final double[] values,
            final Ref ref,
            final double value) {
        final String sum = formula.fill(in -> number(in, plan.value(in, values), formula));
        final String result = exact(ref.quantity(), value);
        return formula.onlyCopies() ? result : sum + " = " + result;
    }

    private static String number(final Ref ref, final double value, final Formula formula) {
        final Dimension dimension = ref.quantity().dimension();
        if (Double.isNaN(value)) {
            return TEXTS.of("none");
        }
        if (formula.inWords()) {
            return dimension == Dimension.TEMPERATURE
                    ? FigureText.number(value, dimension, IN_WORKINGS)
                    : exact(ref.quantity(), value);
        }
        final Dimension shown = dimension == Dimension.SHARE ? Dimension.FACTOR : dimension;
        final String text = FigureText.number(value, shown, IN_WORKINGS);
        return value < 0 ? "(" + text + ")" : text;
    }

    /**
     * As in the lines of a working, and in what is said beside one: four figures, floors rounded
     * up, ceilings rounded down.
     */
    public static String exact(final Quantity quantity, final double value) {
        return told(quantity, value, IN_WORKINGS);
    }

    /** A result for people: three figures; floors and ceilings as in the lines of a working. */
    public static String result(final Quantity quantity, final double value) {
        return told(quantity, value, RESULT);
    }

    private static String told(final Quantity quantity, final double value, final int digits) {
        return Double.isNaN(value) ? TEXTS.of("nothing-fits") : text(quantity, value, digits);
    }

    private static final Set<Quantity> FLOORS =
            Set.of(FUSE_FLOOR, AMPACITY_NEEDED, SECTION_FOR_DROP, CAPACITY_NEEDED);
    private static final Set<Quantity> CEILINGS = Set.of(FUSE_CEILING, AMPACITY, LONGEST_RUN);

    private static String text(final Quantity quantity, final double value, final int digits) {
        if (FLOORS.contains(quantity)) {
            return FigureText.roundedUp(value, quantity.dimension());
        }
        if (CEILINGS.contains(quantity)) {
            return FigureText.roundedDown(value, quantity.dimension());
        }
        if (quantity.dimension() == Dimension.AREA) {
            return FigureText.of(value, quantity.dimension(), IN_WORKINGS);
        }
        return FigureText.of(value, quantity.dimension(), digits);
    }

    private static String note(final Worked worked, final Step step) {
        if (step.direction().output().quantity() != TABLE_AMPACITY
                || step.direction().reading() != Reading.FORWARD) {
            return "";
        }
        final CableTable table = worked.plan().setting().table();
        final double mm2 = worked.values()[step.inputs()[0]] / Dimension.AREA.scale();
        return table.rowFor(mm2)
                .filter(row -> mm2 > row.sectionMm2() * (1 + 1e-6))
                .map(row -> TEXTS.of("next-row", "row", row.label()) + " ")
                .orElse("")
                .concat(columnNote(table, worked.values()[step.inputs()[1]]))
                .strip();
    }

    private static String columnNote(final CableTable table, final double insulation) {
        return table.insulationColumn(insulation).stream()
                .filter(column -> column < insulation - 1e-6)
                .mapToObj(
                        column ->
                                TEXTS.of(
                                        "next-column",
                                        "insulation",
                                        FigureText.of(column, Dimension.TEMPERATURE)))
                .findFirst()
                .orElse("");
    }
}
