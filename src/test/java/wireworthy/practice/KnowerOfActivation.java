package wireworthy.practice;

import java.util.EnumMap;
import java.util.Map;
import wireworthy.rules.Skill;

/** Knows truth B. */
final class KnowerOfActivation extends Knower {
    private static final Grid BASE = Grid.of(9);
    private static final Grid GAIN = Grid.of(5);

    private final Map<Skill, Double> strength = new EnumMap<>(Skill.class);
    private final Map<Skill, Integer> lastDay = new EnumMap<>(Skill.class);
    private final Map<Skill, Double> logs = new EnumMap<>(Skill.class);
    private int day;

    KnowerOfActivation() {
        super(cells());
    }

    private static double[] cells() {
        final double[] cells = new double[BASE.at().length * GAIN.at().length];
        for (int cell = 0; cell < cells.length; cell++) {
            cells[cell] = BASE.weight()[cell / 5] * GAIN.weight()[cell % 5];
        }
        return cells;
    }

    private double now(final Skill skill) {
        final int days = day - lastDay.getOrDefault(skill, day);
        return strength.getOrDefault(skill, 0.0) * Math.pow(1 + days, -.35);
    }

    private double strengthNow(final Skill skill) {
        return logs.computeIfAbsent(skill, any -> Math.log1p(now(any)));
    }

    @Override
    double right(final Skill skill, final int ability, final int cell, final double difficulty) {
        final double able = .9 * ABILITIES.at()[ability];
        final double base = -.9 + able + .7 * BASE.at()[cell / 5];
        final double gain = Math.abs(.75 + .15 * able + .2 * GAIN.at()[cell % 5]);
        return Slope.sigmoid(base + 1.6 * gain * strengthNow(skill) - .5 * difficulty);
    }

    @Override
    void tried(final Skill skill, final double difficulty, final boolean right) {
        strength.put(skill, now(skill) + (right ? 1 : .7));
        lastDay.put(skill, day);
        logs.clear();
    }

    @Override
    void night() {
        day++;
        logs.clear();
    }
}
