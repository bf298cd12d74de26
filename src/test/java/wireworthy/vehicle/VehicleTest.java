package wireworthy.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.rules.Quantity;

class VehicleTest {
    private static final Circuit DESK = Circuit.named("Ticket desk");
    private static final Circuit FAN = Circuit.named("Fan").fedFrom(new Feed("Ticket desk", false));

    @Test
    void tapsFollowTheNewNameOfTheirFeeder() {
        final Vehicle heron = Vehicle.named("The Heron").plus(DESK).plus(FAN);
        final Vehicle renamed = heron.withCircuit(0, DESK.renamed("Till"));
        assertThat(renamed.circuits().get(1).feed()).isEqualTo(new Feed("Till", false));
    }

    @Test
    void tapsStayWhereAnotherCircuitStillHasTheName() {
        final Vehicle heron = Vehicle.named("The Heron").plus(DESK).plus(DESK).plus(FAN);
        final Vehicle renamed = heron.withCircuit(0, DESK.renamed("Till"));
        assertThat(renamed.circuits().get(2).feed()).isEqualTo(FAN.feed());
    }

    @Test
    void aBlankTextTakesAnEntryAway() {
        final Circuit typed = DESK.withGiven(Quantity.SECTION, "2,5 mm²");
        assertThat(typed.withGiven(Quantity.SECTION, "  ")).isEqualTo(DESK);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    SECTION        | 2,5 mm²   | 2.5 mm²
                    SECTION        | 12 AWG    | 12 AWG (3.31 mm²)
                    DROP_LIMIT     | 3 %       | 3 %
                    DROP_LIMIT     | 0.4 V     | 0.4 V
                    CABLE_TABLE    | Thin-Wall | thin-wall
                    ONE_WAY_LENGTH | 24 ft     | 24 ft (7.315 m)
                    """)
    void anEntryIsShownAsItWasUnderstood(
            final Quantity quantity, final String typed, final String understood) {
        assertThat(Understood.of(quantity, typed).text()).isEqualTo(understood);
    }

    @ParameterizedTest
    @CsvSource({
        "ONE_WAY_LENGTH, 7, has no unit",
        "SECTION, 3 V, is in volts",
        "CABLE_TABLE, string, is not known here",
        "ONE_WAY_LENGTH, 99 km, must lie between"
    })
    void whatCannotBeReadSaysWhy(
            final Quantity quantity, final String typed, final String because) {
        assertThat(Understood.of(quantity, typed))
                .isInstanceOf(Understood.Trouble.class)
                .extracting(Understood::text)
                .asString()
                .contains(because);
    }
}
