package wireworthy.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FigureTextTest {

    @ParameterizedTest
    @CsvSource({
        "0.52566, VOLTAGE, 0.526 V",
        "11.6514, CURRENT, 11.7 A",
        "12, VOLTAGE, 12 V",
        "2.5e-6, AREA, 2.5 mm²",
        "0.00178, DIAMETER, 1.78 mm",
        "0.0416, SHARE, 4.16 %",
        "360000, CHARGE, 100 Ah",
        "5400, TIME, 1.5 h",
        "1728000, ENERGY, 480 Wh",
        "1.72e-8, RESISTIVITY, 0.0172 Ω·mm²/m",
        "0.00741, RESISTANCE_PER_LENGTH, 7.41 mΩ/m",
        "30, TEMPERATURE, 30 °C",
        "-10.5, TEMPERATURE, -10.5 °C",
        "1.43e8, ADIABATIC_K, 143 A·√s/mm²",
        "1.25, FACTOR, 1.25",
        "1234, COUNT, 1234",
        "12, GAUGE, 12 AWG",
        "0, GAUGE, 1/0 AWG",
        "-3, GAUGE, 4/0 AWG",
        "0, VOLTAGE, 0 V",
        "1234.5, POWER, 1230 W",
        "99999, POWER, 100000 W",
        "0.0001234, SHORT_TIME, 0.000123 s",
        "1.5e12, POWER, 1.5 × 10^12 W",
        "2.5e-9, CURRENT, 2.5 × 10^-9 A"
    })
    void aResultHasThreeFiguresAndItsUnit(
            final double si, final Dimension dimension, final String text) {
        assertThat(FigureText.of(si, dimension)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0.0125, 0.0125 Ω", "0.001, 0.001 Ω", "0.00052, 0.52 mΩ", "0, 0 Ω", "14.4, 14.4 Ω"})
    void ohmsBecomeMilliohmsBelowAThousandth(final double ohms, final String text) {
        assertThat(FigureText.of(ohms, Dimension.RESISTANCE)).isEqualTo(text);
    }

    @Test
    void aWorkingMayShowMoreFigures() {
        assertThat(FigureText.of(0.525664, Dimension.VOLTAGE, 4)).isEqualTo("0.5257 V");
        assertThat(FigureText.number(1.5e-6, Dimension.AREA, 4)).isEqualTo("1.5");
        assertThat(FigureText.number(0.0005, Dimension.RESISTANCE, 4)).isEqualTo("0.0005");
    }

    @Test
    void floorsAreShownRoundedUpAndCeilingsRoundedDown() {
        assertThat(FigureText.roundedUp(11.625, Dimension.CURRENT)).isEqualTo("11.63 A");
        assertThat(FigureText.roundedUp(11.6201, Dimension.CURRENT)).isEqualTo("11.63 A");
        assertThat(FigureText.roundedDown(17.649, Dimension.CURRENT)).isEqualTo("17.64 A");
    }

    @Test
    void roundingUpDoesNotMagnifyTheNoiseOfASum() {
        assertThat(FigureText.roundedUp(0.1 + 0.2, Dimension.CURRENT)).isEqualTo("0.3 A");
        assertThat(FigureText.roundedDown(8 * 1.1 / 8, Dimension.CURRENT)).isEqualTo("1.1 A");
    }

    @Test
    void halvesAreRoundedAsPeopleDo() {
        assertThat(FigureText.of(2.675, Dimension.CURRENT)).isEqualTo("2.68 A");
        assertThat(FigureText.of(-2.675, Dimension.TEMPERATURE)).isEqualTo("-2.68 °C");
    }

    @Test
    void theEdgeValueIsFreeOfBinaryNoise() {
        assertThat(FigureText.edge(1.5e-6, Dimension.AREA)).isEqualTo(1.5);
        assertThat(FigureText.edge(0.07, Dimension.SHARE)).isEqualTo(7);
        assertThat(FigureText.edge(1.72e-8, Dimension.RESISTIVITY)).isEqualTo(0.0172);
        assertThat(FigureText.edge(1.0 / 3, Dimension.VOLTAGE)).isEqualTo(0.333333333333333);
    }

    @Test
    void unitsAreShownAsPeopleWriteThem() {
        assertThat(FigureText.unit(Dimension.AREA)).isEqualTo("mm²");
        assertThat(FigureText.unit(Dimension.RESISTANCE)).isEqualTo("Ω");
        assertThat(FigureText.unit(Dimension.FACTOR)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"NAME", "LIST", "COUNT", "GAUGE"})
    void whatIsShownReadsBackAsTheSameFigure(final Dimension dimension) {
        final Random random = new Random(dimension.name().hashCode());
        for (int i = 0; i < 2_000; i++) {
            final double si = Math.pow(10, random.nextDouble() * 16 - 8) * dimension.scale();
            final int digits = 3 + random.nextInt(3);
            final double half = 0.5001 * Math.pow(10, 1 - digits) * si;

            assertThat(readBack(FigureText.of(si, dimension, digits), dimension))
                    .isCloseTo(si, within(half));
            assertThat(readBack(FigureText.roundedUp(si, dimension), dimension))
                    .isBetween(si * (1 - 1e-11), si * 1.001);
            assertThat(readBack(FigureText.roundedDown(si, dimension), dimension))
                    .isBetween(si * 0.999, si * (1 + 1e-11));
        }
    }

    @Test
    void everyGaugeAndCountReadsBack() {
        for (int n = -3; n <= 40; n++) {
            assertThat(readBack(FigureText.of(n, Dimension.GAUGE), Dimension.GAUGE)).isEqualTo(n);
            assertThat(readBack(FigureText.of(n + 3, Dimension.COUNT), Dimension.COUNT))
                    .isEqualTo(n + 3);
        }
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"NAME", "LIST"})
    void theFieldUnitAndTheExampleOfEachDimensionAreRead(final Dimension dimension) {
        final String example = FieldUnit.of(dimension).example();
        final String number = example.substring(0, (example + " ").indexOf(' '));

        final Reading.Read fromExample = (Reading.Read) Figures.read(example, dimension, true);
        final Reading.Read inFieldUnit =
                (Reading.Read) Figures.read(number + " " + dimension.unit(), dimension, true);

        assertThat(fromExample.unit()).isEqualTo(dimension.unit());
        assertThat(inFieldUnit.unit()).isEqualTo(dimension.unit());
        assertThat(inFieldUnit.value()).isEqualTo(fromExample.value());
    }

    private static double readBack(final String text, final Dimension dimension) {
        return ((Reading.Read) Figures.read(text, dimension, true)).value();
    }
}
