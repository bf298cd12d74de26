package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.window.figures.BuiltInFigures.SOLVER;
import static wireworthy.window.figures.BuiltInFigures.kept;
import static wireworthy.window.figures.Engine.asked;
import static wireworthy.window.figures.Engine.move;
import static wireworthy.window.figures.Engine.near;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.lessons.FigureKind;
import wireworthy.rules.Quantity;

/** Conductors side by side, drawn to one scale. */
class SectionToScaleTest {
    private final SectionToScale model =
            new SectionToScale(kept(FigureKind.SECTION_TO_SCALE), SOLVER);

    @ParameterizedTest
    @CsvSource({"0, 7, 0, 0", "2, 5, 3, 1", "7, 7, 6, 3"})
    void everyFigureIsTheEngines(
            final int one, final int other, final int gauge, final int strand) {
        move(model, one, other, gauge, strand);
        for (int i = 0; i < 3; i++) {
            holds(
                    model.now().get().conductors().get(i),
                    "\"%s\": \"%s\""
                            .formatted(i < 2 ? "section" : "gauge", model.knobs().get(i).text()),
                    model.knobs().get(3).text());
        }
    }

    private static void holds(
            final SectionToScale.Conductor conductor, final String size, final String strand) {
        final String resistivity = ", \"resistivity\": \"0.0172 ohm mm2/m\"";
        assertThat(conductor.diameter()).isCloseTo(asked(Quantity.DIAMETER, size), near());
        assertThat(conductor.resistance())
                .isCloseTo(asked(Quantity.RESISTANCE_PER_LENGTH, size + resistivity), near());
        final String section = "\"section\": \"%s mm2\"".formatted(conductor.section() * 1e6);
        assertThat(conductor.strands())
                .isCloseTo(
                        asked(
                                Quantity.STRANDS,
                                section + ", \"diameter\": \"%s\"".formatted(strand)),
                        near());
    }

    @Test
    void twiceTheDiameterIsFourTimesTheSection() {
        final SectionToScale.Shown shown = model.now().get();
        assertThat(shown.comparison())
                .isEqualTo(
                        "6 mm² beside 1.5 mm²: 2 times the diameter, 2 × 2 = 4 times the section,"
                                + " and the resistance divided by 4");
    }

    @Test
    void theNextSizeOfTheOtherKindIsNeverThinner() {
        assertThat(model.now().get().conductors())
                .extracting(SectionToScale.Conductor::next)
                .containsExactly("15 AWG", "9 AWG", "4 mm²");
    }

    @Test
    void noConductorIsDrawnLargerThanTheScale() {
        move(model, 7, 7, 0);
        final SectionToScale.Shown shown = model.now().get();
        assertThat(shown.conductors())
                .allMatch(each -> each.diameter() <= shown.mostDiameter() * (1 + 1e-9));
    }

    @Test
    void theWordsSayEveryFigureThatIsDrawn() {
        final SectionToScale.Shown shown = model.now().get();
        shown.conductors()
                .forEach(
                        each ->
                                assertThat(shown.words())
                                        .contains(
                                                each.name(),
                                                each.sectionText(),
                                                each.diameterText(),
                                                each.strandsText(),
                                                each.next(),
                                                each.resistanceText()));
    }
}
