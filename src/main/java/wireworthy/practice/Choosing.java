package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wireworthy.rules.Ref;
import wireworthy.working.Line;
import wireworthy.working.Step;
import wireworthy.working.Telling;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/** Draws one exercise with a few things to choose from. */
final class Choosing {
    /** How far, as a factor, a value to be estimated may lie from its power of ten. */
    private static final double NEAR = 2.2;

    private static final List<Integer> POWERS_SHOWN = List.of(-2, -1, 0, 1, 2);
    private static final int SHOWN = 3;

    private final Draw draw;
    private final Template template;
    private final long seed;
    private final SplitMix random;

    Choosing(final Draw draw, final Template template, final long seed) {
        this.draw = draw;
        this.template = template;
        this.seed = seed;
        this.random = Draw.random(template, seed);
    }

    ChoiceProblem problem() {
        if (template.task() instanceof Task.Choose choose && template.finds().isEmpty()) {
            return unworked(choose);
        }
        Unworkable refusal = new Unworkable("options", "not exactly one option is right");
        for (int draws = 1; draws <= Draw.MOST_DRAWS; draws++) {
            try {
                final Optional<ChoiceProblem> fit = fit(draw.candidate(template, random), draws);
                if (fit.isPresent()) {
                    return fit.orElseThrow();
                }
            } catch (final Unworkable e) {
                refusal = e;
            }
        }
        throw refusal;
    }

    private Optional<ChoiceProblem> fit(final Draw.Candidate drawn, final int draws) {
        return template.task() instanceof Task.Estimate estimate
                ? estimate(estimate, drawn, draws)
                : choice((Task.Choose) template.task(), drawn, draws);
    }

    private ChoiceProblem unworked(final Task.Choose choose) {
        final Drawn drawn = new Drawn(template, random);
        final List<ChoiceProblem.Option> options = new ArrayList<>();
        for (final Task.Option option : choose.options()) {
            final boolean right = ((RightWhen.Always) option.right()).right();
            options.add(
                    new ChoiceProblem.Option(
                            drawn.filled(option.text()),
                            right,
                            drawn.filled(option.why()),
                            option.slip()));
        }
        return new ChoiceProblem(
                template,
                seed,
                drawn.filled(template.text()),
                drawn.filled(choose.ask()),
                Optional.empty(),
                random.shuffled(options),
                1);
    }

    private Optional<ChoiceProblem> choice(
            final Task.Choose choose, final Draw.Candidate drawn, final int draws) {
        final List<ChoiceProblem.Option> options = new ArrayList<>();
        for (final Task.Option option : choose.options()) {
            options.add(
                    new ChoiceProblem.Option(
                            drawn.filled(option.text()),
                            option.right().holds(drawn.worked()),
                            drawn.filled(option.why()),
                            option.slip()));
        }
        final long texts = options.stream().map(ChoiceProblem.Option::text).distinct().count();
        final long right = options.stream().filter(ChoiceProblem.Option::right).count();
        return right == 1 && texts == options.size()
                ? Optional.of(problem(choose.ask(), drawn, options, draws))
                : Optional.empty();
    }

    private ChoiceProblem problem(
            final String ask,
            final Draw.Candidate drawn,
            final List<ChoiceProblem.Option> options,
            final int draws) {
        final boolean powers = template.task() instanceof Task.Estimate;
        return new ChoiceProblem(
                template,
                seed,
                drawn.filled(template.text()),
                drawn.filled(ask),
                Optional.of(drawn.worked()),
                powers ? options : random.shuffled(options),
                draws);
    }

    /** Powers of ten, the smallest first; the right one at a place drawn by lot. */
    private Optional<ChoiceProblem> estimate(
            final Task.Estimate estimate, final Draw.Candidate drawn, final int draws) {
        final Ref ref = drawn.asked().get(0);
        final double unit = ref.quantity().dimension().scale();
        final double value = drawn.worked().value(ref).orElseThrow() / unit;
        final double nearest = Math.pow(10, Math.rint(Math.log10(value)));
        if (!(value < nearest * NEAR && nearest < value * NEAR)) {
            return Optional.empty();
        }
        final int first = random.below(SHOWN);
        final List<ChoiceProblem.Option> options = new ArrayList<>();
        for (final int power : POWERS_SHOWN.subList(first, first + SHOWN)) {
            options.add(power(drawn.worked(), ref, nearest * unit, power));
        }
        return Optional.of(problem(estimate.ask(), drawn, options, draws));
    }

    private static ChoiceProblem.Option power(
            final Worked worked, final Ref ref, final double nearest, final int off) {
        final String text = Telling.result(ref.quantity(), nearest * Math.pow(10, off));
        final List<Step> way = worked.wayTo(ref);
        final Line line = Telling.line(worked, way.get(way.size() - 1), worked.values());
        return new ChoiceProblem.Option(
                text,
                off == 0,
                EstimateText.why(line, Telling.result(ref.quantity(), nearest), off),
                off == 0 ? Optional.empty() : Optional.of("power-of-ten"));
    }
}
