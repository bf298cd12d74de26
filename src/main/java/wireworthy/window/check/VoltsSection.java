package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.VoltsLost;
import wireworthy.vehicle.check.Way;
import wireworthy.window.parts.Verdict;

/** How many volts are lost, cold and warm, beside the limit; and the ways out. */
final class VoltsSection {
    /** What is told of a circuit: the drop from the fuse board on. */
    static VoltsLost of(final CheckedCircuit circuit) {
        return new VoltsLost(
                circuit.dropFromBoard(), circuit.dropLimit(), circuit.warmDrop(), circuit.ways());
    }

    private VoltsSection() {}

    /** How it is said. */
    static List<Line> told(final VoltsLost shown) {
        final List<Line> parts = new ArrayList<>();
        parts.add(Line.subtitle(CheckTexts.of("volts")));
        parts.add(
                shown.drop().isPresent() && shown.limit().isPresent()
                        ? Line.notice(verdict(shown), text(shown))
                        : Line.soft(CheckTexts.of("drop.unknown")));
        if (!shown.ways().isEmpty()) {
            parts.add(Line.prose(CheckTexts.of("ways")));
            shown.ways().forEach(way -> parts.add(way(way)));
        }
        return parts;
    }

    private static Verdict verdict(final VoltsLost shown) {
        final double most = Math.max(shown.drop().orElseThrow(), shown.warm().orElse(0));
        return most > shown.limit().orElseThrow() ? Verdict.CAUTION : Verdict.SOUND;
    }

    private static String text(final VoltsLost shown) {
        final String cold =
                CheckTexts.of(
                        "drop.cold", "drop", volts(shown.drop()), "limit", volts(shown.limit()));
        return shown.warm().isEmpty()
                ? cold
                : cold + " " + CheckTexts.of("drop.warm", "drop", volts(shown.warm()));
    }

    private static Line way(final Way way) {
        return Line.prose("·  " + way.text());
    }

    private static String volts(final OptionalDouble volts) {
        return FigureText.of(volts.orElseThrow(), Dimension.VOLTAGE);
    }
}
