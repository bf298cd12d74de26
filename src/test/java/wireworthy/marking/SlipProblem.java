package wireworthy.marking;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wireworthy.facts.Awg;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Asking;
import wireworthy.working.Worked;

/**
 * A problem drawn from a template: its question worked and the figures of its slips. In a template
 * {@code <2..9>} is a number in three figures, {@code <n2..9>} a whole one, {@code <a|b>} a choice.
 */
record SlipProblem(Worked worked, Ref asked, List<Outcome> slips) {
    private static final double FROM_A_SIZE = 0.05;
    private static final Pattern PLACE = Pattern.compile("<([^>]+)>");

    static SlipProblem of(final String template, final Random random) {
        final Worked worked = Asking.worked(filled(template, random));
        final Ref asked = Ref.circuit(worked.question().find().get(0));
        return new SlipProblem(worked, asked, SlipFigures.of(worked, asked));
    }

    double right() {
        return worked.value(asked).orElse(Double.NaN);
    }

    double figure(final int slip) {
        return slip < 0 ? right() : slips.get(slip).value();
    }

    double distance(final int one, final int other) {
        final double a = figure(one);
        final double b = figure(other);
        return Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
    }

    /** Whether a step from size to size lies on the way, so that slips meet by chance. */
    boolean bySize() {
        return asked.quantity().chosen()
                || worked.wayTo(asked).stream()
                        .map(step -> step.direction().output())
                        .anyMatch(ref -> rated(ref.quantity()));
    }

    private boolean rated(final Quantity quantity) {
        return quantity == Quantity.FUSE_FLOOR && asked.quantity() != Quantity.FUSE_FLOOR;
    }

    boolean sizesApart() {
        return apart(Quantity.FUSE_FLOOR) && apart(Quantity.SECTION_FOR_DROP);
    }

    private boolean apart(final Quantity quantity) {
        final OptionalDouble value = worked.value(quantity);
        return value.isEmpty()
                || size(quantity, 1 - FROM_A_SIZE) == size(quantity, 1 + FROM_A_SIZE);
    }

    private int size(final Quantity quantity, final double factor) {
        final double value = worked.value(quantity).orElseThrow() * factor;
        final List<Double> sizes =
                quantity == Quantity.FUSE_FLOOR
                        ? worked.plan().setting().series().ratings()
                        : worked.plan().setting().table().rows().stream()
                                .map(row -> row.sectionMm2() * Dimension.AREA.scale())
                                .toList();
        return (int) sizes.stream().filter(size -> size < value).count();
    }

    private static String filled(final String template, final Random random) {
        return PLACE.matcher(template)
                .replaceAll(match -> Matcher.quoteReplacement(drawn(match.group(1), random)));
    }

    private static String drawn(final String range, final Random random) {
        if (range.contains("|")) {
            final List<String> all = List.of(range.split("\\|", -1));
            return all.get(random.nextInt(all.size()));
        }
        final boolean whole = range.startsWith("n");
        final List<String> ends = List.of(range.substring(whole ? 1 : 0).split("\\.\\.", -1));
        final double least = Double.parseDouble(ends.get(0));
        final double most = Double.parseDouble(ends.get(1));
        return whole
                ? String.valueOf((int) least + random.nextInt((int) (most - least) + 1))
                : figures(least * Math.pow(most / least, random.nextDouble()), 3);
    }

    private static String figures(final double value, final int figures) {
        final BigDecimal rounded = new BigDecimal(value).round(new MathContext(figures));
        return rounded.setScale(rounded.scale() + figures - rounded.precision()).toPlainString();
    }

    static String typed(final double si, final Quantity quantity, final int figures) {
        return quantity == Quantity.GAUGE
                ? Awg.label(si)
                : figures(si / quantity.dimension().scale(), figures)
                        + " "
                        + quantity.dimension().unit();
    }
}
