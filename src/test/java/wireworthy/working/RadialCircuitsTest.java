package wireworthy.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Cables without rings against closed forms: sums of currents (Kirchhoff), a ladder of resistances
 * folded into one source (Thévenin), and the quadratic of a load of constant power at its end.
 */
class RadialCircuitsTest {
    private static final int EACH = 1000;
    private static final double CLOSE = 1e-9;

    /** A line of places with one ohmic load each, and what stands at its end in their stead. */
    private record Ladder(
            double supply,
            double internal,
            List<CableNetwork.Stretch> stretches,
            List<NetworkLoad> loads,
            double open,
            double resistance) {
        static Ladder of(final long seed) {
            final Random random = new Random(seed);
            final double supply = 12 * (1 + random.nextInt(4));
            final double internal = 0.001 + 0.02 * random.nextDouble();
            final List<CableNetwork.Stretch> stretches = new ArrayList<>();
            final List<NetworkLoad> loads = new ArrayList<>();
            double open = supply;
            double resistance = internal;
            final int places = 1 + random.nextInt(20);
            for (int i = 1; i <= places; i++) {
                final double cable = 0.005 + 0.1 * random.nextDouble();
                stretches.add(stretch(i - 1, i, cable));
                resistance += cable;
                if (i < places) {
                    final double ohms = supply * (0.5 + 5 * random.nextDouble());
                    loads.add(new NetworkLoad.Ohms("lamp " + i, name(i), ohms));
                    open *= ohms / (ohms + resistance);
                    resistance *= ohms / (ohms + resistance);
                }
            }
            return new Ladder(supply, internal, stretches, loads, open, resistance);
        }

        String end() {
            return name(stretches.size());
        }

        /** W at its end, beyond which no voltage carries them. */
        double most() {
            return open * open / (4 * resistance);
        }

        NetworkSolution with(final double watts) {
            final List<NetworkLoad> all = new ArrayList<>(loads);
            all.add(new NetworkLoad.Watts("converter", end(), watts));
            return NetworkSolver.solve(new CableNetwork(supply, internal, stretches, all));
        }
    }

    @Test
    void alongABranchingCableTheCurrentsBeyondEachStretchAddUp() {
        for (long seed = 0; seed < EACH; seed++) {
            final Random random = new Random(seed);
            final int places = 2 + random.nextInt(58);
            final double internal = 0.02 * random.nextDouble();
            final int[] before = new int[places];
            final double[] ohms = new double[places];
            final double[] amps = new double[places];
            final List<CableNetwork.Stretch> stretches = new ArrayList<>();
            final List<NetworkLoad> loads = new ArrayList<>();
            for (int i = 1; i < places; i++) {
                before[i] = random.nextInt(i);
                ohms[i] = 0.001 + 0.02 * random.nextDouble();
                amps[i] = 0.3 * random.nextDouble();
                stretches.add(stretch(before[i], i, ohms[i]));
                loads.add(new NetworkLoad.Amps("lamp " + i, name(i), amps[i]));
            }
            final double[] beyond = amps.clone();
            for (int i = places - 1; i > 0; i--) {
                beyond[before[i]] += beyond[i];
            }
            final double[] volts = new double[places];
            volts[0] = 12 - internal * beyond[0];
            for (int i = 1; i < places; i++) {
                volts[i] = volts[before[i]] - ohms[i] * beyond[i];
            }

            final NetworkSolution solution =
                    NetworkSolver.solve(new CableNetwork(12, internal, stretches, loads));

            for (int i = 0; i < places; i++) {
                assertThat(solution.at(name(i)))
                        .as("seed %d, place %d", seed, i)
                        .isCloseTo(volts[i], within(CLOSE));
            }
        }
    }

    @Test
    void aLoadOfConstantPowerRunsAtTheHigherOfTwoVoltagesUpToFivePercentBelowTheMost() {
        for (long seed = 0; seed < EACH; seed++) {
            final Ladder ladder = Ladder.of(seed);
            for (final double share : new double[] {0.1, 0.5, 0.9, 0.95}) {
                final double watts = share * ladder.most();
                final double half = ladder.open() / 2;
                final double higher = half + Math.sqrt(half * half - watts * ladder.resistance());

                assertThat(ladder.with(watts).at(ladder.end()))
                        .as("seed %d, %s of the most", seed, share)
                        .isCloseTo(higher, within(1e-7));
            }
        }
    }

    @Test
    void fivePercentMoreThanTheCableCanDeliverIsRefused() {
        for (long seed = 0; seed < EACH; seed++) {
            final Ladder ladder = Ladder.of(seed);

            assertThatThrownBy(() -> ladder.with(1.05 * ladder.most()))
                    .as("seed %d", seed)
                    .isInstanceOf(Unworkable.class)
                    .hasMessageContaining("can't deliver");
        }
    }

    private static String name(final int place) {
        return place == 0 ? CableNetwork.SOURCE : "p" + place;
    }

    private static CableNetwork.Stretch stretch(final int from, final int to, final double ohms) {
        return new CableNetwork.Stretch(name(from), name(to), ohms, Double.NaN, "");
    }
}
