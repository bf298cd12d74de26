package wireworthy.practice;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** A simulated learner at practice: eight problems an evening. */
final class SimulatedLearner {
    /** Twenty skills. */
    static final List<Skill> SKILLS = List.of(Skill.values()).subList(0, 20);

    /** Two templates of each difficulty for each skill. */
    static final List<Template> TEMPLATES =
            SKILLS.stream()
                    .flatMap(skill -> IntStream.range(0, 6).mapToObj(i -> template(skill, i)))
                    .toList();

    static final int A_DAY = 8;
    private static final double SPREAD = 0.8;
    private static final double LEFT_OF_IT = 0.3;

    final RandomGenerator random;
    final Truth truth;
    private final long seed;
    private Standing standing = Standing.NONE;
    private int problems;

    /**
     * @param truth how one learns, from a source of randomness
     */
    SimulatedLearner(final long seed, final Function<RandomGenerator, Truth> truth) {
        this.seed = seed;
        this.random = new SplittableRandom(seed);
        this.truth = truth.apply(random);
    }

    private static Template template(final Skill skill, final int number) {
        return new Template(
                "bank",
                1,
                skill.id() + number,
                skill,
                number % 3 - 1,
                "Text.",
                Drawing.LAMP,
                Map.of(),
                Task.Figures.one("Ask?", Quantity.DROP),
                false);
    }

    Standing standing() {
        return standing;
    }

    Skills skills() {
        return standing.skills();
    }

    int problems() {
        return problems;
    }

    long day() {
        return problems / A_DAY;
    }

    SkillState state(final Skill skill) {
        return skills().state(skill, lastDay());
    }

    long lastDay() {
        return (problems - 1L) / A_DAY;
    }

    private Moment now() {
        return new Moment(day(), day() * 86_400 + problems % A_DAY * 90L);
    }

    /** What the program chooses next. */
    Choice chosen() {
        return Chooser.next(TEMPLATES, standing, now(), seed).orElseThrow();
    }

    /** Any template with equal chance. */
    Choice anything() {
        final Template template = TEMPLATES.get(random.nextInt(TEMPLATES.size()));
        return new Choice(template, problems, Reason.CHOSEN);
    }

    /** A problem no harder or easier than its template says, give or take a little. */
    boolean answers(final Choice choice) {
        final Template template = choice.template();
        final double difficulty = template.difficulty() + LEFT_OF_IT * random.nextGaussian();
        return answers(template.skill(), difficulty, template.difficulty(), template.fullId());
    }

    /**
     * A problem, and what was told of it before.
     *
     * @param marked its difficulty, as its template says
     * @param told the chance that the program tells
     * @param real the true chance
     * @param running how many of the last answers in a row were right, three at most
     */
    record Tried(Skill skill, int marked, double told, double real, int running, boolean right) {}

    /** A problem of any difficulty. */
    Tried tries(final Skill skill) {
        final double difficulty = SPREAD * random.nextGaussian();
        final int marked = (int) Math.max(-1, Math.min(1, Math.round(difficulty)));
        final double chance = skills().chance(skill, day(), marked);
        final double real = truth.chance(skill, difficulty);
        final int running = Math.min(3, skills().running(skill));
        final String template = "template" + random.nextInt(5);
        final boolean right = answers(skill, difficulty, marked, template);
        return new Tried(skill, marked, chance, real, running, right);
    }

    private boolean answers(
            final Skill skill, final double difficulty, final int marked, final String template) {
        final boolean right = random.nextDouble() < truth.chance(skill, difficulty);
        truth.tried(skill, right);
        standing =
                standing.with(
                        new Answered(
                                skill, now(), right, false, false, marked, template, problems));
        problems++;
        if (problems % A_DAY == 0) {
            truth.night();
        }
        return right;
    }
}
