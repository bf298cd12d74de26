package wireworthy.rules;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import wireworthy.facts.FuseSeries;

/** The fuse between its floor and its ceiling, and the main fuse. */
final class FuseRules {
    private static final double EVEN = 1e-9;

    private FuseRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        floor(topic);
        ceiling(topic);
        choice(topic);
        main(topic);
        return topic.directions();
    }

    private static void floor(final Topic topic) {
        topic.rule("fuse-floor", Skill.FUSE_FLOOR)
                .gives(FUSE_FLOOR, "{circuit-current} × {margin}", (x, s) -> x[0] * x[1])
                .forward()
                .skips("margin-left-out", "{circuit-current}")
                .slip("margin-taken-off", "{circuit-current} ÷ {margin}", (x, s) -> x[0] / x[1])
                .slip(
                        "margin-taken-off",
                        "{circuit-current} × (2 − {margin})",
                        (x, s) -> x[0] * (2 - x[1]))
                .slip("margin-added-flat", "{circuit-current} + {margin}", (x, s) -> x[0] + x[1])
                .slip("fuse-by-start-current", "{margin} × {start-current}", (x, s) -> x[0] * x[1])
                .slip(
                        "fuse-by-start-current",
                        "{margin} × {start-multiple} × {circuit-current}",
                        (x, s) -> x[0] * x[1] * x[2])
                .gives(CIRCUIT_CURRENT, "{fuse-floor} ÷ {margin}", (x, s) -> x[0] / x[1])
                .backward()
                .gives(MARGIN, "{fuse-floor} ÷ {circuit-current}", (x, s) -> x[0] / x[1])
                .backward();
    }

    private static void ceiling(final Topic topic) {
        topic.rule("fuse-ceiling", Skill.FUSE_CEILING)
                .gives(FUSE_CEILING, "{ampacity}", (x, s) -> x[0])
                .forward()
                .skips("underated-upper-bound", "{table-ampacity}");
    }

    private static void choice(final Topic topic) {
        topic.rule("fuse-choice", Skill.FUSE_CHOICE)
                .gives(
                        FUSE,
                        "smallest standard rating from {fuse-floor} to {fuse-ceiling}",
                        (x, s) -> between(x[0], x[1], s.series()))
                .where(Setting::cableKnown)
                .forward()
                .from(s -> s.series().source())
                .picks(
                        "fuse-rounded-down",
                        "next rating below {fuse-floor}",
                        (x, s) -> s.series().below(x[0]).orElse(Double.NaN))
                .picks(
                        "fuse-nearest",
                        "rating nearest to {fuse-floor}",
                        (x, s) -> s.series().nearest(x[0]).orElse(Double.NaN))
                .picks(
                        "fuse-over-cable",
                        "next rating above {fuse-ceiling}",
                        (x, s) -> above(x[0], s.series()))
                .picks(
                        "fuse-below-load",
                        "largest rating at or below {circuit-current}",
                        (x, s) -> s.series().atOrBelow(x[0]).orElse(Double.NaN))
                .picks(
                        "plate-fuse-only",
                        "next rating at or above {fuse-floor}, whatever the cable",
                        (x, s) -> s.series().atOrAbove(x[0]).orElse(Double.NaN))
                .picks(
                        "underated-upper-bound",
                        "largest rating up to {table-ampacity}",
                        (x, s) -> s.series().atOrBelow(x[0]).orElse(Double.NaN))
                .picks(
                        "underated-upper-bound",
                        "second largest rating up to {table-ampacity}",
                        (x, s) -> second(x[0], s.series()))
                .gives(
                        FUSE,
                        "smallest standard rating at or above {fuse-floor}",
                        (x, s) -> s.series().atOrAbove(x[0]).orElse(Double.NaN))
                .where(s -> !s.cableKnown())
                .forward()
                .from(s -> s.series().source())
                .picks(
                        "fuse-rounded-down",
                        "next rating below {fuse-floor}",
                        (x, s) -> s.series().below(x[0]).orElse(Double.NaN))
                .picks(
                        "fuse-nearest",
                        "rating nearest to {fuse-floor}",
                        (x, s) -> s.series().nearest(x[0]).orElse(Double.NaN))
                .picks(
                        "fuse-skipped",
                        "one rating more than {fuse-floor} needs",
                        (x, s) -> skipped(x[0], s.series()))
                .picks(
                        "fuse-below-load",
                        "largest rating at or below {circuit-current}",
                        (x, s) -> s.series().atOrBelow(x[0]).orElse(Double.NaN));
    }

    private static double between(
            final double floor, final double ceiling, final FuseSeries series) {
        final double rating = series.atOrAbove(floor).orElse(Double.NaN);
        return rating <= ceiling * (1 + EVEN) ? rating : Double.NaN;
    }

    private static double above(final double amps, final FuseSeries series) {
        return series.atOrAbove(amps * (1 + 1e-6)).orElse(Double.NaN);
    }

    private static double second(final double amps, final FuseSeries series) {
        return series.below(series.atOrBelow(amps).orElse(Double.NaN)).orElse(Double.NaN);
    }

    private static double skipped(final double floor, final FuseSeries series) {
        return above(series.atOrAbove(floor).orElse(Double.NaN), series);
    }

    private static void main(final Topic topic) {
        topic.rule("main-fuse", Skill.FUSE_CHOICE)
                .gives(
                        MAIN_FUSE,
                        "next standard rating at or above {fuse-floor}",
                        (x, s) -> Setting.mainRatingFor(x[0]).orElse(Double.NaN))
                .unless(LOADS)
                .forward();
    }
}
