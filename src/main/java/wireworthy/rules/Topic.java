package wireworthy.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import wireworthy.facts.Source;
import wireworthy.rules.Direction.Reading;
import wireworthy.rules.Slip.Kind;

/**
 * Writes down the rules of one topic: each rule with the directions it is read in, each direction
 * with the settings it holds in and the slips people make at it.
 */
final class Topic {
    private static final double LINE = 1;
    private static final double CARRYING = 4;

    private final List<Direction> directions = new ArrayList<>();
    private String rule = "";
    private Skill skill = Skill.UNITS_AND_PREFIXES;
    private Optional<Draft> open = Optional.empty();

    /** The line being written. */
    private static final class Draft {
        private final Quantity output;
        private final Formula formula;
        private final Arithmetic arithmetic;
        private Reading reading = Reading.RELATION;
        private double cost = LINE;
        private Predicate<Setting> holds = setting -> true;
        private Function<Setting, Optional<Source>> source = setting -> Optional.empty();
        private Optional<Refusal.Why> refusal = Optional.empty();
        private final List<Slip> slips = new ArrayList<>();

        Draft(final Quantity output, final String template, final Arithmetic arithmetic) {
            this.output = output;
            this.formula = Formula.of(template);
            this.arithmetic = arithmetic;
        }
    }

    /** Begins a rule. */
    Topic rule(final String id, final Skill ofSkill) {
        close();
        rule = id;
        skill = ofSkill;
        return this;
    }

    /** Begins a direction of the rule: what it gives, the sum in words, the sum in SI. */
    Topic gives(final Quantity output, final String template, final Arithmetic arithmetic) {
        close();
        open = Optional.of(new Draft(output, template, arithmetic));
        return this;
    }

    /** The way the rule is meant: a limit, a table, a default among its inputs. */
    Topic forward() {
        draft().reading = Reading.FORWARD;
        return this;
    }

    /** The rule turned round: never from a value that was assumed. */
    Topic backward() {
        draft().reading = Reading.BACKWARD;
        return this;
    }

    /** Two names for one value here. */
    Topic carried() {
        draft().reading = Reading.CARRIED;
        draft().cost = CARRYING;
        return this;
    }

    /** Makes the direction dearer, so that a plainer road wins. */
    Topic cost(final double cost) {
        draft().cost = cost;
        return this;
    }

    /** Holds only where the asker gave these. */
    Topic when(final Quantity... given) {
        return where(setting -> Arrays.stream(given).allMatch(setting::gave));
    }

    /** Holds only where the asker gave none of these. */
    Topic unless(final Quantity... given) {
        return where(setting -> Arrays.stream(given).noneMatch(setting::gave));
    }

    Topic where(final Predicate<Setting> condition) {
        draft().holds = draft().holds.and(condition);
        return this;
    }

    Topic from(final Function<Setting, Source> source) {
        draft().source = setting -> Optional.of(source.apply(setting));
        return this;
    }

    /** Why the sum can give nothing. */
    Topic refuses(final Refusal.Why why) {
        draft().refusal = Optional.of(why);
        return this;
    }

    /** A slip that gets the sum of this line wrong. */
    Topic slip(final String id, final String template, final Arithmetic arithmetic) {
        return slip(Kind.MISCALCULATES, id, template, arithmetic);
    }

    /** A slip that copies another value where this line's result belongs. */
    Topic skips(final String id, final String template) {
        return slip(Kind.SKIPS_A_LINE, id, template, (x, s) -> x[0]);
    }

    /** A slip that answers another line than the one asked. */
    Topic answers(final String id, final String template) {
        return slip(Kind.ANSWERS_ANOTHER_LINE, id, template, (x, s) -> x[0]);
    }

    /** A slip that takes another row of a table or series. */
    Topic picks(final String id, final String template, final Arithmetic arithmetic) {
        return slip(Kind.PICKS_A_WRONG_ROW, id, template, arithmetic);
    }

    private Topic slip(
            final Kind kind, final String id, final String template, final Arithmetic arithmetic) {
        draft().slips.add(new Slip(id, kind, Formula.of(template), arithmetic));
        return this;
    }

    /** The directions written. */
    List<Direction> directions() {
        close();
        return List.copyOf(directions);
    }

    private Draft draft() {
        return open.orElseThrow();
    }

    private void close() {
        open.ifPresent(d -> directions.add(finished(d)));
        open = Optional.empty();
    }

    private Direction finished(final Draft d) {
        return new Direction(
                rule,
                skill,
                Ref.circuit(d.output),
                d.formula,
                d.arithmetic,
                d.reading,
                d.cost,
                d.holds,
                d.source,
                d.refusal,
                List.copyOf(d.slips));
    }
}
