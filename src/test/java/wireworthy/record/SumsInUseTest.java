package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which table and limit are usual for whom. */
class SumsInUseTest {
    @ParameterizedTest
    @CsvSource({
        "VAN,     BRITAIN,       MM2, thin-wall,  0.03",
        "TRAILER, EUROPE,        MM2, thin-wall,  0.03",
        "VAN,     AUSTRALIA,     MM2, thin-wall,  0.05",
        "VAN,     NORTH_AMERICA, AWG, boat-cable, 0.03",
        "VAN,     ELSEWHERE,     MM2, thin-wall,  0.03",
        "BOAT,    EUROPE,        MM2, iso-10133,  0.03",
        "BOAT,    NORTH_AMERICA, AWG, boat-cable, 0.03",
        "BOAT,    NORTH_AMERICA, MM2, boat-cable, 0.03",
        "BOAT,    AUSTRALIA,     MM2, iso-10133,  0.03",
        "BOAT,    EUROPE,        AWG, boat-cable, 0.03"
    })
    void theUsualTableAndLimit(
            final Craft craft,
            final Region region,
            final WireSizes sizes,
            final String table,
            final double limit) {
        final SumsInUse usual = SumsInUse.usual(craft, region, sizes);
        assertThat(usual.cableTable()).isEqualTo(table);
        assertThat(usual.dropLimit()).isEqualTo(limit);
        assertThat(usual.margin()).isEqualTo(1.25);
    }

    @Test
    void whatWasSetAloneIsUsualAgainUnderOtherCircumstances() {
        final SumsInUse own = SumsInUse.USUAL.withMargin(1.5).withDropLimit(0.1);
        assertThat(own.withCraft(Craft.BOAT))
                .isEqualTo(SumsInUse.usual(Craft.BOAT, Region.ELSEWHERE, WireSizes.MM2));
    }

    @Test
    void theTableInUseIsThere() {
        assertThat(SumsInUse.tables())
                .allSatisfy(
                        id ->
                                assertThat(SumsInUse.USUAL.withCableTable(id).table().id())
                                        .isEqualTo(id));
    }
}
