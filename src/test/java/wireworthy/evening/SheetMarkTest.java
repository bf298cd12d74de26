package wireworthy.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;
import wireworthy.record.WireSizes;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** A mark brings back the very same sheet, and nothing else passes for one. */
class SheetMarkTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final int SHEETS = 10_000;

    private final SplittableRandom random = new SplittableRandom(7);
    private final SheetMark marks = new SheetMark(SHELF);

    private SheetPlan anyPlan() {
        final Pick pick = random.nextBoolean() ? bySkills() : byTemplates();
        return new SheetPlan(
                pick,
                random.nextBoolean(),
                random.nextInt(1, SheetPlan.MOST_LEARNERS + 1),
                random.nextBoolean(),
                random.nextInt(SheetPlan.SEEDS));
    }

    private Pick bySkills() {
        return new Pick.BySkills(
                some(Skill.class),
                random.nextInt(1, Pick.MOST_PROBLEMS + 1),
                some(Difficulty.class),
                Stream.of(WireSizes.values()).skip(random.nextInt(3)).findFirst(),
                some(SystemVoltage.class));
    }

    private Pick byTemplates() {
        final List<Template> all = SHELF.templates(false);
        return new Pick.ByTemplates(
                IntStream.range(0, random.nextInt(1, 13))
                        .mapToObj(i -> all.get(random.nextInt(all.size())).fullId())
                        .toList());
    }

    private <E extends Enum<E>> Set<E> some(final Class<E> type) {
        final EnumSet<E> some = EnumSet.allOf(type);
        some.removeIf(each -> random.nextBoolean());
        return some.isEmpty() ? EnumSet.allOf(type) : some;
    }

    @Test
    void tenThousandPlansComeBackFromTheirMarks() {
        for (int i = 0; i < SHEETS; i++) {
            final SheetPlan plan = anyPlan();
            final String mark = marks.text(plan);
            assertThat(marks.plan(mark)).isEqualTo(plan);
            assertThat(marks.text(marks.plan(mark))).isEqualTo(mark);
        }
    }

    @Test
    void theSheetOfAMarkHasTheSameProblems() {
        final SheetPlan plan =
                new SheetPlan(Pick.BySkills.of(Set.of(Skill.DROP), 5), true, 3, false, 42);
        final Sheet made = Sheet.of(plan, SHELF);
        final Sheet again = Sheet.marked(made.mark().toLowerCase(Locale.ROOT), Shelf.builtIn());

        assertThat(again.exercises(3))
                .extracting(Exercise::text, Exercise::seed)
                .isEqualTo(
                        made.exercises(3).stream()
                                .map(
                                        it ->
                                                org.assertj.core.groups.Tuple.tuple(
                                                        it.text(), it.seed()))
                                .toList());
        assertThat(made.exercises(1))
                .extracting(Exercise::text)
                .isNotEqualTo(made.exercises(2).stream().map(Exercise::text).toList());
    }

    @Test
    void withTheSameNumbersForAllEveryLearnerHasTheSame() {
        final SheetPlan plan =
                new SheetPlan(Pick.BySkills.of(Set.of(Skill.DROP), 3), false, 3, false, 42);
        final Sheet sheet = Sheet.of(plan, SHELF);

        assertThat(sheet.exercises(1))
                .extracting(Exercise::text)
                .isEqualTo(sheet.exercises(2).stream().map(Exercise::text).toList());
    }

    @Test
    void aMarkBySkillHas20SignsAndOneOfTwelveProblemsAtMost32() {
        final SheetPlan bySkills = new SheetPlan(bySkills(), true, 12, false, 1);
        assertThat(marks.text(bySkills)).matches("(\\w{4}-){4}\\w{4}");

        final Pick twelve =
                new Pick.ByTemplates(
                        SHELF.templates(false).stream().limit(12).map(Template::fullId).toList());
        assertThat(marks.text(new SheetPlan(twelve, true, 12, false, 1)))
                .matches("(\\w{4}-){7}\\w{4}");
    }

    @Test
    void moreThanAMarkCanHoldIsRefusedWithTheWayOut() {
        final Pick thirteen =
                new Pick.ByTemplates(
                        SHELF.templates(false).stream().limit(13).map(Template::fullId).toList());

        assertThatThrownBy(() -> marks.text(new SheetPlan(thirteen, true, 12, false, 1)))
                .hasMessage("13 problems picked one by one are too many for a sheet mark");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "AB", "ABC", "not a mark", "0000-0000-0000-0000-000?"})
    void whatIsNoMarkIsSaid(final String typed) {
        assertThatThrownBy(() -> marks.plan(typed)).hasMessageContaining("no sheet mark");
    }

    @Test
    void aSignTooManyOrTooFewIsNoticed() {
        for (int i = 0; i < 500; i++) {
            final String mark = marks.text(anyPlan()).replace("-", "");
            for (int place = 0; place < mark.length(); place++) {
                final String fewer = mark.substring(0, place) + mark.substring(place + 1);
                final String more = mark.substring(0, place) + "7" + mark.substring(place);
                assertThatThrownBy(() -> marks.plan(fewer)).isInstanceOf(EveningProblem.class);
                assertThatThrownBy(() -> marks.plan(more)).isInstanceOf(EveningProblem.class);
            }
        }
    }

    @Test
    void aMarkMadeFromOtherBanksIsRefused() {
        final Shelf others =
                Shelf.of(
                        new wireworthy.practice.Banks(
                                wireworthy.practice.Banks.read(List.of()).banks().subList(1, 9),
                                List.of()));
        final Pick pick = Pick.BySkills.of(EnumSet.of(Skill.DROP), 2);
        final String mark = new SheetMark(others).text(new SheetPlan(pick, true, 2, false, 3));

        assertThatThrownBy(() -> marks.plan(mark))
                .hasMessageContaining("made from other problem banks");
    }

    @Test
    void whatIsAskedForFits() {
        final Pick.BySkills pick =
                new Pick.BySkills(
                        Set.of(Skill.FUSE_CHOICE, Skill.CURRENT_FROM_POWER),
                        10,
                        Set.of(Difficulty.EASY, Difficulty.MIDDLING),
                        Optional.of(WireSizes.MM2),
                        Set.of(SystemVoltage.V24));
        final Sheet sheet = Sheet.of(new SheetPlan(pick, true, 2, false, 9), SHELF);

        assertThat(sheet.templates()).extracting(Template::difficulty).doesNotContain(1);
        assertThat(sheet.templates())
                .extracting(Template::skill)
                .containsOnly(Skill.FUSE_CHOICE, Skill.CURRENT_FROM_POWER);
        assertThat(sheet.exercises(1))
                .allSatisfy(
                        each ->
                                each.circuit()
                                        .flatMap(
                                                it ->
                                                        it.typed(
                                                                wireworthy.rules.Ref.circuit(
                                                                        Quantity.SUPPLY_VOLTAGE)))
                                        .ifPresent(
                                                it ->
                                                        assertThat(it.value())
                                                                .isBetween(16.0, 32.0)));
    }

    @Test
    void aSkillOfWhichNothingFitsIsNamed() {
        final Pick.BySkills pick =
                new Pick.BySkills(
                        Set.of(Skill.CURRENT_THROUGH_A_CONVERTER),
                        4,
                        Set.of(Difficulty.EASY),
                        Optional.empty(),
                        Set.of(SystemVoltage.V48));

        assertThatThrownBy(() -> Sheet.of(new SheetPlan(pick, true, 2, false, 9), SHELF))
                .hasMessageContaining("current through a converter");
    }
}
