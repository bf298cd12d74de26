package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AwgTest {
    private static final double MM_PER_INCH = 25.4;
    private static final double MM2_PER_CIRCULAR_MIL = 5.0671e-4;

    @Test
    void theFormulaGivesThePublishedDiametersAndAreas() {
        final FactTable table = FactTables.named("gauge");

        assertThat(table.rows())
                .hasSameSizeAs(Awg.numbers())
                .allSatisfy(
                        row -> {
                            final double n =
                                    Awg.number(table.cell(row, "Gauge, AWG")).orElseThrow();
                            assertThat(table.number(row, "Printed diameter, inch") * MM_PER_INCH)
                                    .isCloseTo(Awg.diameterMm(n), withinPercentage(0.06));
                            assertThat(
                                            table.number(row, "Printed area, circular mils")
                                                    * MM2_PER_CIRCULAR_MIL)
                                    .isCloseTo(Awg.areaMm2(n), withinPercentage(0.06));
                            assertThat(table.number(row, "Area by formula, mm2"))
                                    .isCloseTo(Awg.areaMm2(n), offset(6e-5));
                            assertThat(table.number(row, "Diameter by formula, mm"))
                                    .isCloseTo(Awg.diameterMm(n), offset(6e-5));
                        });
    }

    @Test
    void theExactNumberUndoesTheArea() {
        assertThat(Awg.numbers())
                .hasSize(28)
                .startsWith(-3)
                .endsWith(24)
                .allSatisfy(
                        n ->
                                assertThat(Awg.exactNumber(Awg.areaMm2(n)))
                                        .isCloseTo(n, offset(1e-9)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void noAreaNoNumber(final double mm2) {
        assertThat(Awg.exactNumber(mm2)).isNaN();
    }

    @ParameterizedTest
    @CsvSource({"12, 12 AWG", "1, 1 AWG", "0, 1/0 AWG", "-1, 2/0 AWG", "-3, 4/0 AWG"})
    void aGaugeIsWrittenAndReadTheSameWay(final int n, final String written) {
        assertThat(Awg.label(n)).isEqualTo(written);
        assertThat(Awg.number(written)).hasValue(n);
    }

    @ParameterizedTest
    @CsvSource({"00, -1", "0000, -3", "0, 0", "4/0, -3", "24, 24", "' 8AWG ', 8"})
    void otherWaysOfWritingAreRead(final String written, final int n) {
        assertThat(Awg.number(written)).hasValue(n);
    }

    @Test
    void whatIsNoGaugeIsNotRead() {
        assertThat(List.of("", "AWG", "5/0", "00000", "-2", "2.5", "012", "2.5 mm2"))
                .allSatisfy(written -> assertThat(Awg.number(written)).isEmpty());
    }

    @Test
    void aGaugeBetweenTwoNumbersIsWrittenToATenth() {
        assertThat(Awg.label(12.34)).isEqualTo("12.3 AWG");
    }
}
