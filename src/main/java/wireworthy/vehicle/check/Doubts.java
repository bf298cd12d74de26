package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wireworthy.facts.CableTables;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.texts.TextBundle;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Understood;

/** Figures that were read, but are more likely to have another unit than they were taken for. */
final class Doubts {
    private static final TextBundle TEXTS = new TextBundle("doubts");
    private static final int THINNEST_GAUGE = 30;

    /** A vehicle's load draws more than this only where it turns an engine. */
    private static final double MUCH = 300;

    private static final double FAR = 20;

    /** Sections are written down rounded: 2.08 mm2 is 14 AWG. */
    private static final double SAME = 0.02;

    private static final double MILLI = 1000;

    private final Circuit circuit;
    private final List<FieldNote> notes = new ArrayList<>();

    private Doubts(final Circuit circuit) {
        this.circuit = circuit;
    }

    /** All doubts about a circuit. */
    static List<FieldNote> of(final Circuit circuit) {
        final Doubts doubts = new Doubts(circuit);
        doubts.section("given.section", circuit.part().given().text(SECTION));
        for (int i = 0; i < circuit.stretches().size(); i++) {
            doubts.section(
                    "given.network.stretches[" + i + "].section",
                    circuit.stretches().get(i).given().text(SECTION));
        }
        final String loads = circuit.isNetwork() ? "given.network.loads[" : "given.loads[";
        for (int i = 0; i < circuit.loads().size(); i++) {
            doubts.current(loads + i + "].current", circuit.loads().get(i));
        }
        return doubts.notes;
    }

    private static Optional<Reading.Read> read(final Quantity quantity, final String text) {
        return Understood.of(quantity, text) instanceof Understood.Figure figure
                ? Optional.of(figure.read())
                : Optional.empty();
    }

    /** A section that is in no table: the number of a gauge, or another slip of the pen. */
    private void section(final String where, final String text) {
        read(SECTION, text)
                .filter(read -> !read.unit().equals("AWG"))
                .map(read -> read.value() / Dimension.AREA.scale())
                .filter(mm2 -> !isMade(mm2))
                .ifPresent(mm2 -> notes.add(FieldNote.doubt(where, noSize(mm2))));
    }

    private static boolean isMade(final double mm2) {
        return CableTables.all().stream()
                .flatMap(table -> table.rows().stream())
                .anyMatch(row -> Math.abs(row.sectionMm2() / mm2 - 1) < SAME);
    }

    private static String noSize(final double mm2) {
        final String area = FigureText.of(mm2 * Dimension.AREA.scale(), Dimension.AREA);
        final String gauge = (int) mm2 + " AWG";
        return mm2 == Math.rint(mm2) && mm2 <= THINNEST_GAUGE
                ? TEXTS.of(
                        "section.gauge",
                        "area",
                        area,
                        "gauge",
                        gauge,
                        "meant",
                        Understood.of(SECTION, gauge).text())
                : TEXTS.of("section", "area", area);
    }

    /** Amps that would be right as milliamps. */
    private void current(final String where, final Load load) {
        final double fuse =
                read(FUSE, circuit.part().given().text(FUSE))
                        .map(Reading.Read::value)
                        .orElse(MUCH / FAR);
        read(LOAD_CURRENT, load.entries().text(LoadEntry.CURRENT))
                .map(Reading.Read::value)
                .filter(amps -> amps > FAR * fuse && amps / MILLI <= fuse)
                .ifPresent(amps -> notes.add(FieldNote.doubt(where, milliamps(amps))));
    }

    private static String milliamps(final double amps) {
        return TEXTS.of(
                "milliamps",
                "amps",
                FigureText.of(amps, Dimension.CURRENT),
                "number",
                FigureText.number(amps, Dimension.CURRENT, 4));
    }
}
