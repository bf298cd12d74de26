package wireworthy.practice;

import java.util.EnumMap;
import java.util.Map;
import wireworthy.rules.Skill;

/**
 * The best that can be told from answers: by someone who knows the law by which simulated learners
 * learn, with all its figures, but of this one learner only the answers. Bayes' rule over a grid of
 * abilities and, for each, of what a skill may be like. No program can do better.
 */
abstract class Knower {
    /** Standard normal values of a grid, and how often each occurs. */
    record Grid(double[] at, double[] weight) {
        static Grid of(final int points) {
            final double[] at = new double[points];
            final double[] weight = new double[points];
            double sum = 0;
            for (int i = 0; i < points; i++) {
                at[i] = points == 1 ? 0 : -2.4 + 4.8 * i / (points - 1);
                weight[i] = Math.exp(-at[i] * at[i] / 2);
                sum += weight[i];
            }
            for (int i = 0; i < points; i++) {
                weight[i] /= sum;
            }
            return new Grid(at, weight);
        }
    }

    static final Grid ABILITIES = Grid.of(11);

    private final double[] ability = ABILITIES.weight().clone();
    private final double[] cells;
    private final double[] chances = new double[ability.length];
    private final double[][] rights;
    private final Map<Skill, double[][]> weights = new EnumMap<>(Skill.class);

    /**
     * @param cells how often each kind of skill occurs
     */
    Knower(final double[] cells) {
        this.cells = cells;
        this.rights = new double[ability.length][cells.length];
    }

    /** Someone who knows nothing, where the best is not asked for. */
    static Knower nobody() {
        return new Knower(new double[] {1}) {
            @Override
            double right(final Skill skill, final int a, final int cell, final double difficulty) {
                return .5;
            }

            @Override
            void tried(final Skill skill, final double difficulty, final boolean right) {
                // Nothing is learned from it.
            }

            @Override
            void night() {
                // Nothing changes.
            }
        };
    }

    /** How likely a try goes right if ability and skill are of these kinds. */
    abstract double right(Skill skill, int ability, int cell, double difficulty);

    /** What a try leaves behind, however it went. */
    abstract void tried(Skill skill, double difficulty, boolean right);

    /** A day goes by. */
    abstract void night();

    private double[][] weights(final Skill skill) {
        return weights.computeIfAbsent(
                skill,
                any -> {
                    final double[][] all = new double[ability.length][];
                    for (int a = 0; a < all.length; a++) {
                        all[a] = cells.clone();
                    }
                    return all;
                });
    }

    /** How likely a try goes right, as far as the answers so far tell. */
    double chance(final Skill skill, final double difficulty) {
        final double[][] kinds = weights(skill);
        double sum = 0;
        for (int a = 0; a < ability.length; a++) {
            chances[a] = 0;
            for (int cell = 0; cell < cells.length; cell++) {
                rights[a][cell] = right(skill, a, cell, difficulty);
                chances[a] += kinds[a][cell] * rights[a][cell];
            }
            sum += ability[a] * chances[a];
        }
        return sum;
    }

    /** Learns from the answer to the try whose chance was asked last. */
    void answered(final Skill skill, final double difficulty, final boolean right) {
        final double[][] kinds = weights(skill);
        double all = 0;
        for (int a = 0; a < ability.length; a++) {
            final double seen = right ? chances[a] : 1 - chances[a];
            for (int cell = 0; cell < cells.length; cell++) {
                kinds[a][cell] *= (right ? rights[a][cell] : 1 - rights[a][cell]) / seen;
            }
            ability[a] *= seen;
            all += ability[a];
        }
        for (int a = 0; a < ability.length; a++) {
            ability[a] /= all;
        }
        tried(skill, difficulty, right);
    }
}
