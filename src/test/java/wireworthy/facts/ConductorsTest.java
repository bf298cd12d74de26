package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorsTest {

    @ParameterizedTest
    @CsvSource({"0.5, 39", "1, 19.5", "2.5, 7.98", "16, 1.21", "50, 0.386", "120, 0.161"})
    void class5CopperHasThePublishedResistance(final double mm2, final double mohmPerM) {
        assertThat(Class5Copper.maxResistanceMohmPerM(mm2)).hasValue(mohmPerM);
    }

    @Test
    void class5CopperIsKnownForNominalSectionsOnly() {
        assertThat(Class5Copper.maxResistanceMohmPerM(2.500000000001)).hasValue(7.98);
        assertThat(Class5Copper.maxResistanceMohmPerM(3)).isEmpty();
        assertThat(Class5Copper.maxResistanceMohmPerM(Double.NaN)).isEmpty();
    }

    @Test
    void moreCopperResistsLess() {
        assertThat(Class5Copper.sections()).hasSize(15).isSorted();
        assertThat(Class5Copper.sections())
                .map(mm2 -> -Class5Copper.maxResistanceMohmPerM(mm2).orElseThrow())
                .isSorted();
    }

    @Test
    void class5AllowsAboutASixthMoreThanTheResistivitySum() {
        assertThat(Class5Copper.maxResistanceMohmPerM(2.5).orElseThrow())
                .isCloseTo(1.16 * 1000 * Copper.RESISTIVITY_OHM_MM2_PER_M / 2.5, offset(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1",
        "1, 1",
        "2, 1",
        "2.0000000001, 1",
        "2.5, 0.7",
        "3, 0.7",
        "4, 0.6",
        "6, 0.6",
        "7, 0.5",
        "24, 0.5",
        "25, 0.4",
        "300, 0.4"
    })
    void companyLowersTheCurrent(final double conductors, final double factor) {
        assertThat(BundleFactors.factor(conductors)).isEqualTo(factor);
    }

    @Test
    void onlyTheLastBundleFactorIsFromMemory() {
        assertThat(BundleFactors.source().text()).isEqualTo("33 CFR 183.425 Table 5, note 2");
        assertThat(BundleFactors.source(24).provenance()).isEqualTo(Provenance.READ);
        assertThat(BundleFactors.source(25).provenance()).isEqualTo(Provenance.MEMORY);
    }

    @Test
    void aCountThatIsNoNumberHasNoFactor() {
        assertThatIllegalArgumentException().isThrownBy(() -> BundleFactors.factor(Double.NaN));
    }

    @Test
    void theConstantsInUseStandInTheirTables() {
        assertThat(column("copper", "Resistivity, ohm mm2/m"))
                .contains(Copper.RESISTIVITY_OHM_MM2_PER_M + "");
        assertThat(column("copper", "As published")).contains(Copper.ALPHA_20 + "");
        assertThat(column("aluminium", "Value"))
                .containsExactly(Aluminium.RESISTIVITY_OHM_MM2_PER_M + "", Aluminium.ALPHA_20 + "");
        assertThat(column("fuse-loading", "Value")).contains(TradeFigure.FUSE_MARGIN.value() + "");
    }

    private static List<String> column(final String id, final String heading) {
        final FactTable table = FactTables.named(id);
        return table.rows().stream().map(row -> table.cell(row, heading)).toList();
    }

    @Test
    void aSourceSaysWhenItIsUnconfirmed() {
        assertThat(Copper.source().text()).isEqualTo("OpenStax College Physics 2e, chapter 20");
        assertThat(Aluminium.source().text()).endsWith("(from memory, unconfirmed)");
        assertThat(TradeFigure.DROP_LIMIT.source().text()).endsWith("(common practice, no source)");
    }
}
