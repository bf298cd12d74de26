package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;
import java.util.stream.DoubleStream;
import wireworthy.texts.TextBundle;

/** The standard section that meets both limits, heat and drop. */
final class SectionRules {
    private static final TextBundle REFUSALS = new TextBundle("refusals");

    private static final double EVEN = 1e-9;

    private SectionRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        topic.rule("standard-section", WHICH_LIMIT_GOVERNS)
                .gives(
                        STANDARD_SECTION,
                        "smallest size that is no thinner than the {section-for-drop} and"
                                + " the {section-for-ampacity}",
                        (x, s) -> sizeFor(Math.max(x[0], x[1]), s))
                .forward()
                .refuses((x, s) -> noSize(Math.max(x[0], x[1]), s))
                .picks(
                        "section-rounded-down",
                        "size below what {section-for-drop} and {section-for-ampacity} need",
                        (x, s) -> sizeBelow(sizeFor(Math.max(x[0], x[1]), s), s))
                .picks(
                        "section-rounded-down",
                        "size nearest to what {section-for-drop} and {section-for-ampacity} need",
                        (x, s) -> nearest(Math.max(x[0], x[1]), s))
                .picks(
                        "section-skipped",
                        "one size more than {section-for-drop} and {section-for-ampacity} need",
                        (x, s) -> sizeFor(sizeFor(Math.max(x[0], x[1]), s) * (1 + 1e-6), s))
                .picks(
                        "drop-governs-only",
                        "smallest size of at least {section-for-drop}, the heat left out",
                        (x, s) -> sizeFor(x[0], s))
                .picks(
                        "ampacity-governs-only",
                        "smallest size of at least {section-for-ampacity}, the drop left out",
                        (x, s) -> sizeFor(x[0], s));
        return topic.directions();
    }

    private static double sizeFor(final double needed, final Setting s) {
        for (final double size : s.sizes()) {
            if (size >= needed * (1 - EVEN)) {
                return size;
            }
        }
        return Double.NaN;
    }

    private static double sizeBelow(final double size, final Setting s) {
        return DoubleStream.of(s.sizes())
                .filter(each -> each < size * (1 - EVEN))
                .max()
                .orElse(Double.NaN);
    }

    private static double nearest(final double needed, final Setting s) {
        double best = Double.NaN;
        for (final double size : s.sizes()) {
            if (!(Math.abs(size - needed) >= Math.abs(best - needed))) {
                best = size;
            }
        }
        return best;
    }

    private static Refusal noSize(final double needed, final Setting s) {
        final String mm2 = FigureText.roundedUp(needed, Dimension.AREA);
        if (s.available().isEmpty()) {
            return new Refusal(
                    "given.cable-table",
                    REFUSALS.of("would-be-needed", "mm2", mm2, "why", AmpacityRules.tooLarge(s)));
        }
        return new Refusal("given.available-sections", REFUSALS.of("none-available", "mm2", mm2));
    }
}
