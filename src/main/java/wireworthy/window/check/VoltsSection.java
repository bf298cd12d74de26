package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.Node;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.VoltsLost;
import wireworthy.vehicle.check.Way;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** How many volts are lost, cold and warm, beside the limit; and the ways out. */
final class VoltsSection {
    /** What is told of a circuit: the drop from the fuse board on. */
    static VoltsLost of(final CheckedCircuit circuit) {
        return new VoltsLost(
                circuit.dropFromBoard(), circuit.dropLimit(), circuit.warmDrop(), circuit.ways());
    }

    private VoltsSection() {}

    /** How it is shown. */
    static List<Node> drawn(final VoltsLost shown) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(CheckTexts.of("volts")));
        parts.add(
                shown.drop().isPresent() && shown.limit().isPresent()
                        ? new Notice(verdict(shown), Texts.kept(text(shown)))
                        : Texts.soft(CheckTexts.of("drop.unknown")));
        if (!shown.ways().isEmpty()) {
            parts.add(Texts.paragraph(CheckTexts.of("ways")));
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

    private static Node way(final Way way) {
        return Texts.paragraph("·  " + Texts.kept(way.text()));
    }

    private static String volts(final OptionalDouble volts) {
        return FigureText.of(volts.orElseThrow(), Dimension.VOLTAGE);
    }
}
