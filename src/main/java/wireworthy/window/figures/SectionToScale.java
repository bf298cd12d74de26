package wireworthy.window.figures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.Class5Copper;
import wireworthy.facts.StandardSizes;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Conductors beside each other: two by their section, one by its gauge. */
final class SectionToScale implements FigureModel<SectionToScale.Shown> {
    private final Solver solver;
    private final Knob one;
    private final Knob other;
    private final Knob gauge;
    private final Knob strand;
    private final Knob resistivity;
    private final double mostDiameter;
    private final ObjectBinding<Shown> now;

    /**
     * A conductor.
     *
     * @param name as it is sold
     * @param section m2
     * @param diameter m, of solid round wire of this section
     * @param strands how many strands make the section, seldom a whole number
     * @param resistance ohm/m
     * @param next the next size of the other kind that is not thinner; empty where there is none
     */
    record Conductor(
            String name,
            double section,
            double diameter,
            double strands,
            double resistance,
            String next) {
        String sectionText() {
            return Telling.result(Quantity.SECTION, section);
        }

        String diameterText() {
            return Telling.result(Quantity.DIAMETER, diameter);
        }

        String resistanceText() {
            return Telling.result(Quantity.RESISTANCE_PER_LENGTH, resistance);
        }

        /** To the nearest whole strand. */
        String strandsText() {
            return Long.toString(Math.round(strands));
        }

        String words(final String strandSize) {
            return FigureTexts.of(
                    next.isEmpty() ? "scale.conductor" : "scale.conductor.next",
                    "name",
                    name,
                    "section",
                    sectionText(),
                    "diameter",
                    diameterText(),
                    "strands",
                    strandsText(),
                    "strand",
                    strandSize,
                    "resistance",
                    resistanceText(),
                    "next",
                    next);
        }
    }

    /**
     * What is drawn.
     *
     * @param strandSize the diameter of one strand
     * @param mostDiameter m, of the thickest conductor there is to choose
     */
    record Shown(List<Conductor> conductors, String strandSize, double mostDiameter)
            implements Told {
        public Shown {
            conductors = List.copyOf(conductors);
        }

        /** The first two held against each other. */
        String comparison() {
            final Conductor one = conductors.get(0);
            final Conductor two = conductors.get(1);
            if (StandardSizes.same(one.section(), two.section())) {
                return FigureTexts.of("scale.same");
            }
            final Conductor thin = one.section() < two.section() ? one : two;
            final Conductor thick = one.section() < two.section() ? two : one;
            final String wide = times(thick.diameter() / thin.diameter());
            return FigureTexts.of(
                    "scale.beside",
                    "thick",
                    thick.name(),
                    "thin",
                    thin.name(),
                    "wide",
                    wide,
                    "area",
                    times(thick.section() / thin.section()),
                    "resistance",
                    times(thin.resistance() / thick.resistance()));
        }

        private static String times(final double ratio) {
            return FigureText.number(ratio, Dimension.FACTOR, 3);
        }

        @Override
        public String words() {
            return conductors.stream()
                            .map(each -> each.words(strandSize))
                            .collect(Collectors.joining(" "))
                    + " "
                    + FigureTexts.of("scale.words", "comparison", comparison());
        }
    }

    SectionToScale(final Figure figure, final Solver solver) {
        this.solver = solver;
        one = Knob.of(FigureTexts.of("scale.first"), figure.handle(FigureOption.SECTION));
        other = Knob.of(FigureTexts.of("scale.second"), figure.handle(FigureOption.OTHER_SECTION));
        gauge = Knob.of(FigureTexts.of("scale.gauge"), figure.handle(FigureOption.GAUGE));
        strand =
                Knob.of(
                        FigureTexts.of("scale.strand"),
                        figure.handle(FigureOption.STRAND_DIAMETER));
        resistivity =
                Knob.of(FigureTexts.of("resistivity"), figure.handle(FigureOption.RESISTIVITY));
        mostDiameter =
                Stream.of(
                                diameter(Quantity.SECTION, one.greatest()),
                                diameter(Quantity.SECTION, other.greatest()),
                                diameter(Quantity.GAUGE, gauge.smallest()))
                        .max(Double::compare)
                        .orElseThrow();
        now =
                Bindings.createObjectBinding(
                        this::shown, all().map(Knob::stop).toArray(Observable[]::new));
    }

    private Stream<Knob> all() {
        return Stream.of(one, other, gauge, strand, resistivity);
    }

    @Override
    public List<Knob> knobs() {
        return all().filter(Knob::moves).toList();
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        return new Shown(
                List.of(bySection(one), bySection(other), byGauge()), strand.text(), mostDiameter);
    }

    private double diameter(final Quantity size, final double value) {
        return new Asking().with(size, value).value(solver, Quantity.DIAMETER);
    }

    private Conductor bySection(final Knob knob) {
        final Worked worked =
                new Asking()
                        .with(knob)
                        .with(resistivity)
                        .find(
                                solver,
                                Quantity.DIAMETER,
                                Quantity.GAUGE,
                                Quantity.RESISTANCE_PER_LENGTH);
        final OptionalDouble next = worked.value(Quantity.GAUGE);
        return new Conductor(
                knob.text(),
                knob.value(),
                worked.value(Quantity.DIAMETER).orElseThrow(),
                strands(knob.value()),
                worked.value(Quantity.RESISTANCE_PER_LENGTH).orElseThrow(),
                next.isPresent() ? FigureText.of(next.getAsDouble(), Dimension.GAUGE) : "");
    }

    private Conductor byGauge() {
        final Worked worked =
                new Asking()
                        .with(gauge)
                        .with(resistivity)
                        .find(
                                solver,
                                Quantity.SECTION,
                                Quantity.DIAMETER,
                                Quantity.RESISTANCE_PER_LENGTH);
        final double section = worked.value(Quantity.SECTION).orElseThrow();
        return new Conductor(
                gauge.text(),
                section,
                worked.value(Quantity.DIAMETER).orElseThrow(),
                strands(section),
                worked.value(Quantity.RESISTANCE_PER_LENGTH).orElseThrow(),
                nextMetric(section));
    }

    private double strands(final double section) {
        return new Asking()
                .with(Quantity.SECTION, section)
                .with(Quantity.DIAMETER, strand.value())
                .value(solver, Quantity.STRANDS);
    }

    /** The next section of IEC 60228 that is not thinner. */
    private static String nextMetric(final double section) {
        final OptionalDouble next =
                StandardSizes.atOrAbove(Class5Copper.sections(), section / Dimension.AREA.scale());
        return next.isPresent()
                ? FigureText.of(next.getAsDouble() * Dimension.AREA.scale(), Dimension.AREA)
                : "";
    }
}
