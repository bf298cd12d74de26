package wireworthy.window.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wireworthy.practice.Answered;
import wireworthy.practice.Moment;
import wireworthy.practice.Prerequisites;
import wireworthy.practice.SkillState;
import wireworthy.practice.Standing;
import wireworthy.record.HeldDay;
import wireworthy.rules.Skill;

/** What is said of where one stands. */
class StandTest {
    private static final long DAY = 20_500;

    private static Answered answer(final Skill skill, final long day, final boolean right) {
        return new Answered(
                skill, new Moment(day, day * 86_400), right, false, false, 0, "bank/one", 1);
    }

    /** After some answers of one day to drop, all right or all wrong. */
    private static Standing after(final int times, final boolean right) {
        final List<Answered> all = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            all.add(answer(Skill.DROP, DAY, right));
        }
        return Standing.of(all);
    }

    private static Stand on(final long day, final Standing standing) {
        return Stand.of(standing, List.of(), List.of(), day);
    }

    private static List<String> said(final Stand stand) {
        return StandTexts.of(stand.of(Skill.DROP), stand.today());
    }

    @Test
    void aSkillThatHoldsSaysSinceWhenAndWhenItIsDue() {
        final Stand stand = on(DAY, after(6, true));

        assertThat(said(stand))
                .containsExactly(
                        "Snug since 16\u00a0February 2026: the last answers were right without help.",
                        "Due again on 17\u00a0February 2026, tomorrow.",
                        "6 answers count for it, the last on 16\u00a0February 2026.");
        assertThat(stand.holding()).isOne();
    }

    @Test
    void aDayLaterItIsDueAndSaysSo() {
        final Stand stand = on(DAY + 1, after(6, true));

        assertThat(stand.of(Skill.DROP).state()).isEqualTo(SkillState.DUE);
        assertThat(said(stand))
                .first()
                .asString()
                .startsWith("Due again today: it has held since 16\u00a0February 2026.");
        assertThat(said(on(DAY + 3, after(6, true))))
                .first()
                .asString()
                .startsWith("Due again since 17\u00a0February 2026");
        assertThat(stand.first().skill()).isEqualTo(Skill.DROP);
    }

    @Test
    void whatWentWrongHasWorkedLooseThoughItIsLikelyToBeRight() {
        final Standing once = after(6, true).with(answer(Skill.DROP, DAY + 1, false));

        assertThat(said(on(DAY + 1, once)))
                .first()
                .asString()
                .startsWith("Worked loose: it held from 16\u00a0February 2026");
    }

    @Test
    void whatIsStuckIsForTheClassLeaderThatDayOnly() {
        final Standing vain = after(8, false);

        assertThat(said(on(DAY, vain))).anyMatch(it -> it.contains("Show it to your class leader"));
        assertThat(said(on(DAY + 1, vain))).noneMatch(it -> it.contains("class leader"));
    }

    @Test
    void aClockSetBackIsTold() {
        final Standing standing = after(6, true);

        assertThat(on(DAY, standing).clockBehind()).isEmpty();
        assertThat(on(DAY - 9, standing).clockBehind()).hasValue(DAY);
    }

    @Test
    void everySkillStandsInOneRowBelowAllItStandsOn() {
        final Set<Skill> above = new HashSet<>();
        for (final List<Skill> row : Stand.rows()) {
            assertThat(row).allMatch(skill -> above.containsAll(Prerequisites.of(skill)));
            above.addAll(row);
        }
        assertThat(above).containsExactlyInAnyOrder(Skill.values());
    }

    @Test
    void heldOverTimeCountsEachDayWhatWasFirmAtItsLastAnswer() {
        final List<HeldDay> days =
                List.of(
                        new HeldDay(1, Set.of(), Set.of(Skill.DROP)),
                        new HeldDay(2, Set.of(Skill.CHARGING, Skill.DROP), Set.of()),
                        new HeldDay(5, Set.of(), Set.of(Skill.DROP)),
                        new HeldDay(6, Set.of(Skill.DROP), Set.of()));

        assertThat(Held.of(days))
                .containsExactly(new Held(1, 0), new Held(2, 2), new Held(5, 1), new Held(6, 2));
    }
}
