package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrettyTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Section, mm2 | Section, mm²",
                "at 30 degC | at 30 °C",
                "Resistivity, ohm mm2/m | Resistivity, Ω·mm²/m",
                "Resistance, mohm/m | Resistance, mΩ/m",
                "Plain copper, ohm/1000 ft | Plain copper, Ω/1000 ft",
                "a common ohm | a common ohm",
                "15 x 2 | 15 × 2"
            })
    void unitsGetTheirSigns(final String plain, final String pretty) {
        assertThat(Pretty.units(plain)).isEqualTo(pretty);
    }

    @ParameterizedTest
    @CsvSource({
        "11, true",
        "0.503, true",
        "-3, true",
        "1.68e-8, true",
        "16/0.20, false",
        "A, false"
    })
    void aFigureIsANumberAlone(final String text, final boolean figure) {
        assertThat(Pretty.isFigure(text)).isEqualTo(figure);
    }
}
