package wireworthy.practice;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import wireworthy.rules.Skill;

/** Truth B: every try strengthens a skill a little, every day weakens it. */
final class Activation implements Truth {
    private final Map<Skill, State> states = new EnumMap<>(Skill.class);
    private int day;

    private static final class State {
        private double base;
        private double gain;
        private double strength;
        private int lastDay;

        private double now(final int day) {
            return strength * Math.pow(1 + day - lastDay, -.35);
        }
    }

    /**
     * A learner.
     *
     * @param shake factor of what a try gains
     */
    Activation(final RandomGenerator random, final Set<Skill> skills, final double shake) {
        final double able = .9 * random.nextGaussian();
        for (final Skill skill : skills) {
            final State state = new State();
            state.base = -.9 + able + .7 * random.nextGaussian();
            state.gain = shake * Math.abs(.75 + .15 * able + .2 * random.nextGaussian());
            states.put(skill, state);
        }
    }

    private State state(final Skill skill) {
        return states.getOrDefault(skill, new State());
    }

    @Override
    public double chance(final Skill skill, final double difficulty) {
        final State state = state(skill);
        return TwoStates.sigmoid(
                state.base + 1.6 * state.gain * Math.log1p(state.now(day)) - .5 * difficulty);
    }

    @Override
    public void tried(final Skill skill, final boolean right) {
        final State state = state(skill);
        state.strength = state.now(day) + (right ? 1 : .7);
        state.lastDay = day;
    }

    @Override
    public void night() {
        day++;
    }
}
