package wireworthy.evening.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.Reply;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;

/** The sheet for next week is on what went wrong, and on nothing else. */
class NextWeekTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final Sheet SHEET =
            sheet(
                    Pick.BySkills.of(
                            Set.of(
                                    Skill.DROP,
                                    Skill.FUSE_FLOOR,
                                    Skill.CURRENT_FROM_POWER,
                                    Skill.UNITS_AND_PREFIXES),
                            8));

    private final SplittableRandom random = new SplittableRandom(5);

    private int seed() {
        return random.nextInt(SheetPlan.SEEDS);
    }

    private static Sheet sheet(final Pick pick) {
        return Sheet.of(new SheetPlan(pick, true, 12, false, 23), SHELF);
    }

    private NextWeek next(final List<HandIn> handIns) {
        return Summary.of(SHEET, handIns).nextWeek(this::seed);
    }

    private static Set<Skill> skills(final NextWeek next) {
        return Sheet.of(next.plan(), SHELF).templates().stream()
                .map(Template::skill)
                .collect(Collectors.toSet());
    }

    /** Everybody answers all soundly, but for what is answered otherwise here. */
    private static List<HandIn> group(final Skill missed, final String answer) {
        return new MadeUpClass(SHEET, Set.of(), 1)
                .handIns().stream().map(each -> sound(each, missed, answer)).toList();
    }

    private static HandIn sound(final HandIn from, final Skill missed, final String answer) {
        HandIn all = HandIn.begun(from.mark(), from.learner(), "", MadeUpClass.NOW);
        for (int problem = 1; problem <= SHEET.problems(); problem++) {
            final List<String> typed =
                    SHEET.templates().get(problem - 1).skill() == missed
                            ? List.of(answer)
                            : Asked.of(SHEET.exercise(from.learner(), problem)).stream()
                                    .map(Asked::right)
                                    .toList();
            all = all.with(new Reply(problem, typed, false, MadeUpClass.NOW));
        }
        return all;
    }

    @Test
    void itIsOnTheSkillAskedWhereTheSlipWasMadeAndSaysSo() {
        final NextWeek next = next(new MadeUpClass(SHEET, Set.of("margin-left-out"), 3).handIns());
        assertThat(skills(next)).contains(Skill.FUSE_FLOOR).hasSizeLessThan(4);
        assertThat(next.chosenFor().why())
                .startsWith("Most went wrong on: fuse floor")
                .contains("The commonest slips there: the margin left out (answers: ");
    }

    /** What is repeated heads the list of skills that is read above it, in the same order. */
    @ParameterizedTest
    @ValueSource(strings = {"milli-as-unit", "margin-left-out", "one-way-length", "unit-prefix"})
    void itNamesTheHeadOfTheListOfSkillsAndNoneNeverMissed(final String slip) {
        for (int seed = 1; seed <= 4; seed++) {
            final Summary summary =
                    Summary.of(SHEET, new MadeUpClass(SHEET, Set.of(slip), seed).handIns());
            final List<String> listed =
                    summary.skills().stream()
                            .filter(each -> each.wrong() > 0)
                            .map(Missed::label)
                            .toList();
            final String why = summary.nextWeek(this::seed).chosenFor().why();
            final String named = why.substring("Most went wrong on: ".length(), why.indexOf('.'));
            assertThat(listed).startsWith(named.split(", "));
        }
    }

    @Test
    void onlyWhatWentWrongMostComesAgain() {
        final NextWeek next = next(group(Skill.DROP, "0.000123 V"));
        assertThat(skills(next)).containsExactly(Skill.DROP);
        assertThat(next.chosenFor().why()).startsWith("Most went wrong on: drop. ");
    }

    @Test
    void whereNothingWasWrongItIsOnWhatWasLeftOpen() {
        final NextWeek next = next(group(Skill.DROP, ""));
        assertThat(skills(next)).containsExactly(Skill.DROP);
        assertThat(next.chosenFor().why())
                .startsWith("Nothing was wrong, but most was left open on: drop. ");
    }

    @Test
    void whereNothingWasMissedTheSkillsComeAgain() {
        final NextWeek next = next(group(Skill.CHARGING, ""));
        assertThat(skills(next)).hasSize(4);
        assertThat(next.chosenFor().why()).startsWith("Nothing was missed.");
    }

    @Test
    void problemsOfThisWeekDoNotComeAgainWhereThereAreOthers() {
        final Sheet next =
                Sheet.of(next(group(Skill.CURRENT_FROM_POWER, "0.000123 A")).plan(), SHELF);
        final Set<Template> again = new HashSet<>(next.templates());
        again.retainAll(SHEET.templates());
        assertThat(again).isEmpty();
        assertThat(next.problems()).isEqualTo(SHEET.problems());
    }

    /**
     * Milliohms of a cable are units, too; whoever has had watts and amps has not heard of them.
     */
    @ParameterizedTest
    @ValueSource(strings = {"milli-as-unit", "series-thinking", "power-times-volts"})
    void itAsksNothingThatWasNotShownByThen(final String slip) {
        final Sheet first =
                sheet(
                        new Pick.ByTemplates(
                                List.of(
                                        "power/house-lamp-current",
                                        "power/water-pump-power",
                                        "units-and-lengths/sensor-in-milliwatts",
                                        "parallel-loads/house-lamps-of-one-kind",
                                        "parallel-loads/lamps-and-pump",
                                        "units-and-lengths/usb-lamps-in-milliamps")));
        final Set<String> shown = asked(first);
        for (int seed = 1; seed <= 5; seed++) {
            final NextWeek next =
                    Summary.of(first, new MadeUpClass(first, Set.of(slip), seed).handIns())
                            .nextWeek(this::seed);
            assertThat(shown).containsAll(asked(Sheet.of(next.plan(), SHELF)));
        }
    }

    private static Set<String> asked(final Sheet sheet) {
        return sheet.exercises(1).stream()
                .flatMap(each -> each.circuit().stream())
                .flatMap(worked -> worked.plan().steps().stream())
                .map(step -> step.direction().rule())
                .collect(Collectors.toSet());
    }

    /** More than a mark could name one by one. */
    @Test
    void aLongSheetIsFollowedByAsLongAOne() {
        final Sheet sheet = sheet(Pick.BySkills.of(Set.of(Skill.DROP, Skill.FUSE_FLOOR), 20));
        final NextWeek next =
                Summary.of(sheet, new MadeUpClass(sheet, Set.of("margin-left-out"), 3).handIns())
                        .nextWeek(this::seed);
        assertThat(Sheet.of(next.plan(), SHELF).problems()).isEqualTo(20);
    }

    @Test
    void itIsNoHarderThanASheetPickedOneByOne() {
        final List<String> easy =
                SHELF.templates(false).stream()
                        .filter(
                                each ->
                                        each.difficulty() < 0
                                                && each.skill() == Skill.CURRENT_FROM_POWER)
                        .map(Template::fullId)
                        .limit(3)
                        .toList();
        final Sheet sheet = sheet(new Pick.ByTemplates(easy));
        final HandIn none = HandIn.begun(sheet.mark(), 1, "", MadeUpClass.NOW);
        final NextWeek next = Summary.of(sheet, List.of(none)).nextWeek(this::seed);
        assertThat(Sheet.of(next.plan(), SHELF).templates())
                .hasSize(3)
                .allSatisfy(each -> assertThat(each.difficulty()).isNegative());
    }
}
