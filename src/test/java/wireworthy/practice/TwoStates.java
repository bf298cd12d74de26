package wireworthy.practice;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import wireworthy.rules.Skill;

/** Truth A: a skill is known or not; a try may teach it, a night may take it. */
final class TwoStates implements Truth {
    private static final double BY_DIFFICULTY = 0.5;

    private final RandomGenerator random;
    private final Map<Skill, State> states = new EnumMap<>(Skill.class);

    private static final class State {
        private boolean known;
        private double learning;
        private double careless;
        private double lucky;
        private int tries;
    }

    private final Shake shake;

    /**
     * By how much the figures of this truth differ from those the model was made with.
     *
     * @param learning factor of the odds that a try teaches
     * @param keeping factor of the half-life of what is known
     * @param noise factor of careless errors and lucky hits
     */
    record Shake(double learning, double keeping, double noise) {
        static final Shake NONE = new Shake(1, 1, 1);
    }

    /**
     * A learner.
     *
     * @param never skills that are unknown and never learned
     */
    TwoStates(
            final RandomGenerator random,
            final Set<Skill> skills,
            final Set<Skill> never,
            final Shake shake) {
        this.random = random;
        this.shake = shake;
        final double able = random.nextGaussian();
        for (final Skill skill : skills) {
            final State state = new State();
            state.known = random.nextDouble() < sigmoid(normal(-1.2 + 0.6 * able, 0.6));
            state.learning = sigmoid(normal(-1.6 + 0.5 * able, 0.4) + Math.log(shake.learning));
            state.careless = shake.noise * within(normal(.09 - .02 * able, .03), .02, .25);
            state.lucky = shake.noise * within(normal(.08, .04), .01, .25);
            if (never.contains(skill)) {
                state.known = false;
                state.learning = 0;
            }
            states.put(skill, state);
        }
    }

    private double normal(final double mean, final double spread) {
        return mean + spread * random.nextGaussian();
    }

    static double sigmoid(final double x) {
        return 1 / (1 + Math.exp(-x));
    }

    private static double within(final double value, final double low, final double high) {
        return Math.max(low, Math.min(high, value));
    }

    private State state(final Skill skill) {
        return states.getOrDefault(skill, new State());
    }

    boolean knows(final Skill skill) {
        return state(skill).known;
    }

    boolean knowsAll() {
        return states.values().stream().allMatch(state -> state.known);
    }

    @Override
    public double chance(final Skill skill, final double difficulty) {
        final State state = state(skill);
        final double plain = state.known ? 1 - state.careless : state.lucky;
        return sigmoid(Math.log(plain / (1 - plain)) - BY_DIFFICULTY * difficulty);
    }

    @Override
    public void tried(final Skill skill, final boolean right) {
        final State state = state(skill);
        state.tries++;
        state.known |= random.nextDouble() < state.learning;
    }

    @Override
    public void night() {
        for (final State state : states.values()) {
            final double halfLife = 4 * shake.keeping * Math.pow(2, Math.min(state.tries / 3.0, 5));
            final boolean lost = random.nextDouble() < 1 - Math.pow(2, -1 / halfLife);
            state.known &= state.tries == 0 || !lost;
        }
    }
}
