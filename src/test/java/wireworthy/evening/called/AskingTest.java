package wireworthy.evening.called;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Exercise;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;
import wireworthy.rules.FigureText;
import wireworthy.rules.Skill;

/** What people call out is taken as they say it, and sorted by where it comes from. */
class AskingTest {
    private static final Shelf SHELF = Shelf.builtIn();

    private static Exercise exercise(final String template) {
        final Pick pick = new Pick.ByTemplates(List.of(template));
        return Sheet.of(new SheetPlan(pick, false, 1, false, 3), SHELF).exercise(1, 1);
    }

    /** Volts over ohms: asks for amps. */
    private static final Problem CURRENT = (Problem) exercise("current/step-strip-current");

    private static final Asking ASKING = Asking.of(CURRENT).get(0);

    private static List<Called> taken(final Asking asking, final String typed) {
        final Taken taken = asking.take(typed);
        assertThat(taken).isInstanceOf(Taken.Answers.class);
        return ((Taken.Answers) taken).called();
    }

    private static String figure(final double value) {
        return FigureText.of(value, CURRENT.asked().quantity().dimension(), 4);
    }

    private static String right() {
        return Asked.of(CURRENT).get(0).right();
    }

    private static Outcome slip(final String id) {
        return SlipFigures.of(CURRENT.worked(), CURRENT.asked()).stream()
                .filter(each -> each.ids().equals(List.of(id)))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4.5 A            | 1",
                "4.5              | 1",
                "4,5 A            | 1",
                "4500 mA          | 1",
                "4.5 A; 9 A; 0.5  | 3",
                "4.5 A 9 A        | 2",
                "4.5 A 9 A 450 mA | 3",
                "4.5, 9           | 2",
                "4.5A 9A          | 2",
                "4.5 9.25         | 2"
            })
    void figuresAreTakenAsPeopleSayThem(final String typed, final int figures) {
        assertThat(taken(ASKING, typed)).hasSize(figures);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 200       | could be one figure or several",
                "4.5; 1,234  | Which one is meant",
                "4.5 V       | volt",
                "many        | many",
                "' '         | called out"
            })
    void whatHasTwoMeaningsOrNoneIsAskedAboutAndNothingOfItIsTaken(
            final String typed, final String why) {
        assertThat(ASKING.take(typed))
                .isInstanceOfSatisfying(
                        Taken.Back.class, back -> assertThat(back.why()).contains(why));
    }

    @Test
    void groupsAreSoundThenSlipBySlipTheCommonestFirstThenWhatNoSlipExplains() {
        final String upsideDown = figure(slip("ohm-upside-down").value());
        final String times = figure(slip("ohm-multiplied").value());
        final String typed = String.join("; ", times, upsideDown, "0.123 A", right(), upsideDown);

        final List<CalledGroup> groups = CalledGroup.of(taken(ASKING, typed));

        assertThat(groups)
                .extracting(group -> group.origin().key())
                .containsExactly(
                        List.of("sound"),
                        List.of("ohm-upside-down"),
                        List.of("ohm-multiplied"),
                        List.of("unknown"));
        assertThat(groups).extracting(CalledGroup::count).containsExactly(1, 2, 1, 1);
        assertThat(groups.get(1).counted()).hasSize(1);
        assertThat(groups.get(1).origin().title()).isEqualTo("the ohms divided by the volts");
        assertThat(groups.get(1).origin().workings().orElseThrow().partsAt()).isPresent();
        assertThat(groups.get(3).origin().workings()).isEmpty();
    }

    @Test
    void oneSlipIsOneGroupHoweverItsFigureIsRounded() {
        final double value = slip("ohm-upside-down").value();
        final String rounded = FigureText.of(value, CURRENT.asked().quantity().dimension(), 3);

        assertThat(CalledGroup.of(taken(ASKING, figure(value) + ";" + rounded))).hasSize(1);
    }

    @Test
    void theLastLineShownIsTheAnswer() {
        final List<WallLine> lines = ASKING.lines();
        final WallLine last = lines.get(lines.size() - 1);

        assertThat(((WallLine.Sum) last).row().sound().ref()).isEqualTo(CURRENT.asked());
    }

    @Test
    void lettersAreCalledOutForChoices() {
        final ChoiceProblem choice = (ChoiceProblem) any(ChoiceProblem.class);
        final Asking asking = Asking.of(choice).get(0);
        final String right = Asked.letter(choice.options().indexOf(choice.right()));
        final String wrong = right.equals("A") ? "B" : "A";

        final List<CalledGroup> groups =
                CalledGroup.of(
                        taken(asking, wrong + right.toLowerCase(Locale.ROOT) + ", " + wrong));

        assertThat(groups)
                .extracting(group -> group.origin().kind())
                .containsExactly(Origin.Kind.SOUND, Origin.Kind.SLIP);
        assertThat(groups.get(1).count()).isEqualTo(2);
        assertThat(groups.get(1).origin().why()).isNotBlank();
        assertThat(asking.take("Z")).isInstanceOf(Taken.Back.class);
        assertThat(asking.take("1")).isInstanceOf(Taken.Back.class);
    }

    @Test
    void rowsOfLettersAreCalledOutForStepsInOrder() {
        final OrderProblem order = (OrderProblem) any(OrderProblem.class);
        final Asking asking = Asking.of(order).get(0);
        final String right = Asked.of(order).get(0).right();
        final String turned = new StringBuilder(right).reverse().toString();

        final List<CalledGroup> groups =
                CalledGroup.of(taken(asking, turned + "; " + right.replace(" ", "")));

        assertThat(groups)
                .extracting(group -> group.origin().kind())
                .containsExactly(Origin.Kind.SOUND, Origin.Kind.SLIP);
        assertThat(groups.get(1).origin().title()).isEqualTo("Parts at step 1");
        assertThat(asking.take(right + "A")).isInstanceOf(Taken.Back.class);
        assertThat(asking.lines()).hasSize(order.stages().size());
    }

    private static Exercise any(final Class<? extends Exercise> kind) {
        return SHELF.templates(false).stream()
                .map(template -> exercise(template.fullId()))
                .filter(kind::isInstance)
                .findFirst()
                .orElseThrow();
    }

    /** Of every skill, what the slips give is put down to them or to their twins. */
    @ParameterizedTest
    @EnumSource
    void theFigureOfASlipIsInAGroupOfThatSlip(final Skill skill) {
        final Sheet sheet =
                Sheet.of(
                        new SheetPlan(
                                Pick.BySkills.of(java.util.Set.of(skill), 3), false, 1, false, 5),
                        SHELF);
        final List<String> missed = new ArrayList<>();
        for (final Exercise each : sheet.exercises(1)) {
            if (each instanceof Problem problem) {
                missed.addAll(missed(problem));
            }
        }
        assertThat(missed).isEmpty();
    }

    private static List<String> missed(final Problem problem) {
        final List<String> missed = new ArrayList<>();
        final Asking asking = Asking.of(problem).get(problem.parts().size() - 1);
        for (final Outcome slip : SlipFigures.of(problem.worked(), problem.asked())) {
            final String figure =
                    Double.isFinite(slip.value())
                            ? FigureText.of(slip.value(), problem.asked().quantity().dimension(), 4)
                            : "";
            if (!figure.isEmpty()
                    && asking.take(figure) instanceof Taken.Answers answers
                    && answers.called().get(0).origin().kind() == Origin.Kind.UNKNOWN) {
                missed.add(slip.ids() + " " + figure + " of " + problem.template().fullId());
            }
        }
        return missed;
    }
}
