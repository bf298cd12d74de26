package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.Node;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.Way;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** How many volts are lost, cold and warm, beside the limit; and the ways out. */
final class VoltsSection {
    /**
     * What is told.
     *
     * @param drop V from the fuse board on
     * @param limit V
     * @param warm V in its own cable
     */
    record Shown(OptionalDouble drop, OptionalDouble limit, OptionalDouble warm, List<Way> ways) {
        static Shown of(final CheckedCircuit circuit) {
            return new Shown(
                    circuit.dropFromBoard(),
                    circuit.dropLimit(),
                    circuit.warmDrop(),
                    circuit.ways());
        }

        private boolean known() {
            return drop.isPresent() && limit.isPresent();
        }

        private Verdict verdict() {
            if (drop.orElseThrow() > limit.orElseThrow()) {
                return Verdict.CAUTION;
            }
            return warm.orElse(0) > limit.orElseThrow() ? Verdict.CAUTION : Verdict.SOUND;
        }

        private String text() {
            final String cold =
                    CheckTexts.of("drop.cold", "drop", volts(drop), "limit", volts(limit));
            return warm.isEmpty()
                    ? cold
                    : cold + " " + CheckTexts.of("drop.warm", "drop", volts(warm));
        }
    }

    private VoltsSection() {}

    static List<Node> of(final Shown shown) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(CheckTexts.of("volts")));
        parts.add(
                shown.known()
                        ? new Notice(shown.verdict(), Texts.kept(shown.text()))
                        : Texts.soft(CheckTexts.of("drop.unknown")));
        if (!shown.ways().isEmpty()) {
            parts.add(Texts.paragraph(CheckTexts.of("ways")));
            shown.ways().forEach(way -> parts.add(way(way)));
        }
        return parts;
    }

    private static Node way(final Way way) {
        return Texts.paragraph("·  " + Texts.kept(way.text()));
    }

    private static String volts(final OptionalDouble volts) {
        return FigureText.of(volts.orElseThrow(), Dimension.VOLTAGE);
    }
}
