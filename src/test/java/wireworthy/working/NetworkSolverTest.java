package wireworthy.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkSolverTest {
    private static CableNetwork.Stretch stretch(
            final String from, final String to, final double ohms) {
        return new CableNetwork.Stretch(from, to, ohms, 2.5e-6, "");
    }

    private static NetworkSolution solve(
            final double internal,
            final List<CableNetwork.Stretch> stretches,
            final NetworkLoad... loads) {
        return NetworkSolver.solve(new CableNetwork(12, internal, stretches, List.of(loads)));
    }

    /** V² − 12 V + P R = 0 has two roots; loads run at the higher one. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 20, 60, 100, 140})
    void wattsOnOneCableAreTheHigherRootOfTheQuadratic(final double watts) {
        final double ohms = 0.25;
        final NetworkSolution solution =
                solve(
                        0,
                        List.of(stretch("source", "A", ohms)),
                        new NetworkLoad.Watts("kettle", "A", watts));

        assertThat(solution.at("A")).isCloseTo(6 + Math.sqrt(36 - watts * ohms), within(1e-9));
    }

    @Test
    void moreWattsThanAQuarterOfTheShortCircuitCannotBeDelivered() {
        assertThatThrownBy(
                        () ->
                                solve(
                                        0,
                                        List.of(stretch("source", "A", 0.25)),
                                        new NetworkLoad.Watts("kettle", "A", 145)))
                .isInstanceOf(Unworkable.class)
                .hasMessageContaining("can't deliver");
    }

    @Test
    void moreAmpsThanTheCableCarriesAtAnyVoltageCannotBeDelivered() {
        assertThatThrownBy(
                        () ->
                                solve(
                                        0,
                                        List.of(stretch("source", "A", 0.25)),
                                        new NetworkLoad.Amps("winch", "A", 49)))
                .isInstanceOf(Unworkable.class);
    }

    @Test
    void dropsAlongALineAddUp() {
        final NetworkSolution solution =
                solve(
                        0.01,
                        List.of(stretch("source", "A", 0.05), stretch("A", "B", 0.1)),
                        new NetworkLoad.Amps("lamps", "A", 4),
                        new NetworkLoad.Amps("fan", "B", 2));

        assertThat(solution.terminal()).isCloseTo(12 - 0.06, within(1e-12));
        assertThat(solution.at("A")).isCloseTo(12 - 0.06 - 0.3, within(1e-12));
        assertThat(solution.at("B")).isCloseTo(12 - 0.06 - 0.3 - 0.2, within(1e-12));
        assertThat(solution.current()).isCloseTo(6, within(1e-12));
        assertThat(solution.heat()).isCloseTo(36 * 0.05 + 4 * 0.1, within(1e-9));
    }

    @Test
    void aRingSharesTheCurrentByItsResistances() {
        final NetworkSolution solution =
                solve(
                        0,
                        List.of(
                                stretch("source", "A", 0.1),
                                stretch("source", "B", 0.1),
                                stretch("A", "B", 0.2)),
                        new NetworkLoad.Amps("lamps", "A", 4));

        // 0.1 Ω beside 0.3 Ω is 0.075 Ω.
        assertThat(solution.at("A")).isCloseTo(12 - 4 * 0.075, within(1e-12));
    }

    @Test
    void wattsOfTheSourceAreWattsOutAndHeat() {
        for (int seed = 0; seed < 200; seed++) {
            final CableNetwork network = RandomNetwork.of(seed);
            final NetworkSolution solution = NetworkSolver.solve(network);
            final double loads =
                    network.loads().stream()
                            .mapToDouble(l -> solution.at(l.at()) * l.current(solution.at(l.at())))
                            .sum();

            assertThat(solution.terminal() * solution.current())
                    .as("seed %d", seed)
                    .isCloseTo(loads + solution.heat(), within(1e-6 * loads));
        }
    }
}
