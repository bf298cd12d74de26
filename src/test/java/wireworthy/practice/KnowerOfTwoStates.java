package wireworthy.practice;

import java.util.EnumMap;
import java.util.Map;
import wireworthy.rules.Skill;

/** Knows truth A. */
final class KnowerOfTwoStates extends Knower {
    private static final Grid LEARNING = Grid.of(4);
    private static final Grid CARELESS = Grid.of(3);
    private static final Grid LUCKY = Grid.of(3);
    private static final int CELLS = 36;
    private static final double[][][] IF_KNOWN = tables(true);
    private static final double[][][] IF_NOT = tables(false);
    private static final double[][] LEARNED = learned();

    private final Map<Skill, double[][]> known = new EnumMap<>(Skill.class);
    private final Map<Skill, Integer> tries = new EnumMap<>(Skill.class);

    KnowerOfTwoStates() {
        super(cells());
        for (final Skill skill : SimulatedLearner.SKILLS) {
            final double[][] all = new double[ABILITIES.at().length][CELLS];
            for (int a = 0; a < all.length; a++) {
                java.util.Arrays.fill(all[a], start(ABILITIES.at()[a]));
            }
            known.put(skill, all);
            tries.put(skill, 0);
        }
    }

    private static double[] cells() {
        final double[] cells = new double[CELLS];
        for (int cell = 0; cell < CELLS; cell++) {
            cells[cell] =
                    LEARNING.weight()[cell / 9]
                            * CARELESS.weight()[cell / 3 % 3]
                            * LUCKY.weight()[cell % 3];
        }
        return cells;
    }

    private static double start(final double able) {
        final Grid fine = Grid.of(15);
        double sum = 0;
        for (int i = 0; i < fine.at().length; i++) {
            sum += fine.weight()[i] * Slope.sigmoid(-1.2 + 0.6 * able + 0.6 * fine.at()[i]);
        }
        return sum;
    }

    private static double within(final double value, final double low) {
        return Math.max(low, Math.min(.25, value));
    }

    private static double moved(final double chance, final double difficulty) {
        return Slope.sigmoid(Math.log(chance / (1 - chance)) - 0.5 * difficulty);
    }

    /**
     * How likely a try goes right, for each marked difficulty, ability and kind of skill.
     *
     * @param known where the skill is known
     */
    private static double[][][] tables(final boolean known) {
        final double[][][] all = new double[3][ABILITIES.at().length][CELLS];
        for (int a = 0; a < ABILITIES.at().length; a++) {
            for (int cell = 0; cell < CELLS; cell++) {
                final double careless =
                        .09 - .02 * ABILITIES.at()[a] + .03 * CARELESS.at()[cell / 3 % 3];
                final double lucky = .08 + .04 * LUCKY.at()[cell % 3];
                final double plain = known ? 1 - within(careless, .02) : within(lucky, .01);
                for (int marked = 0; marked < 3; marked++) {
                    all[marked][a][cell] = moved(plain, marked - 1);
                }
            }
        }
        return all;
    }

    @Override
    double right(final Skill skill, final int ability, final int cell, final double difficulty) {
        final int marked = (int) difficulty + 1;
        final double is = known.get(skill)[ability][cell];
        return is * IF_KNOWN[marked][ability][cell] + (1 - is) * IF_NOT[marked][ability][cell];
    }

    @Override
    void tried(final Skill skill, final double difficulty, final boolean right) {
        final double[][] all = known.get(skill);
        for (int a = 0; a < all.length; a++) {
            for (int cell = 0; cell < CELLS; cell++) {
                final double ifKnown = IF_KNOWN[(int) difficulty + 1][a][cell];
                final double chance = right(skill, a, cell, difficulty);
                final double is =
                        all[a][cell] * (right ? ifKnown / chance : (1 - ifKnown) / (1 - chance));
                all[a][cell] = is + (1 - is) * LEARNED[a][cell / 9];
            }
        }
        tries.merge(skill, 1, Integer::sum);
    }

    private static double[][] learned() {
        final double[][] all = new double[ABILITIES.at().length][LEARNING.at().length];
        for (int a = 0; a < all.length; a++) {
            for (int i = 0; i < all[a].length; i++) {
                all[a][i] = Slope.sigmoid(-1.6 + 0.5 * ABILITIES.at()[a] + 0.4 * LEARNING.at()[i]);
            }
        }
        return all;
    }

    @Override
    void night() {
        known.forEach(
                (skill, all) -> {
                    final int tried = tries.get(skill);
                    final double halfLife = 4 * Math.pow(2, Math.min(tried / 3.0, 5));
                    final double kept = tried == 0 ? 1 : Math.pow(2, -1 / halfLife);
                    for (final double[] of : all) {
                        for (int cell = 0; cell < CELLS; cell++) {
                            of[cell] *= kept;
                        }
                    }
                });
    }
}
