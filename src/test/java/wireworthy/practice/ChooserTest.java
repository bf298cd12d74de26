package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

class ChooserTest {
    private final List<Template> templates = new ArrayList<>();
    private final List<Answered> history = new ArrayList<>();

    ChooserTest() {
        for (final Skill skill : Skill.values()) {
            for (int i = 0; i < 3; i++) {
                templates.add(template(skill, i));
            }
        }
    }

    private static Template template(final Skill skill, final int number) {
        return new Template(
                "bank",
                1,
                skill.id() + number,
                skill,
                number - 1,
                "Text.",
                Drawing.LAMP,
                Map.of(),
                Task.Figures.one("Ask?", Quantity.DROP),
                false);
    }

    private Choice next(final long day) {
        return Chooser.next(templates, Standing.of(history), now(day), 7).orElseThrow();
    }

    /** One answer every ten seconds, from seven in the evening. */
    private Moment now(final long day) {
        final long today = history.stream().filter(a -> a.day() == day).count();
        return new Moment(day, day * 86_400 + 68_400 + today * 10);
    }

    private void answer(final Choice choice, final long day, final boolean right) {
        final Template t = choice.template();
        history.add(
                new Answered(
                        t.skill(),
                        now(day),
                        right,
                        false,
                        false,
                        t.difficulty(),
                        t.fullId(),
                        choice.seed()));
    }

    @Test
    void thereIsNothingToChooseFromNothing() {
        assertThat(Chooser.next(List.of(), Standing.NONE, now(0), 1)).isEmpty();
    }

    @Test
    void isTheSameForTheSameHistoryAndSeed() {
        for (int i = 0; i < 30; i++) {
            assertThat(next(0)).isEqualTo(next(0));
            answer(next(0), 0, i % 3 != 0);
        }
    }

    @Test
    void theReasonForOneLikeItIsTrueOfTheLastOne() {
        final Choice first = next(0);
        answer(first, 0, false);
        assertThat(next(0).why()).startsWith("The last one went wrong");
        answer(first, 0, false);
        answer(first, 0, true);
        assertThat(next(0).why()).startsWith("The last one took more than one try");

        history.clear();
        history.add(aided(first));
        assertThat(next(0).why()).startsWith("The last one was worked with help");
    }

    private Answered aided(final Choice choice) {
        final Template t = choice.template();
        return new Answered(
                t.skill(), now(0), true, true, false, t.difficulty(), t.fullId(), choice.seed());
    }

    @Test
    void beginsWithASkillThatStandsOnNothing() {
        assertThat(Prerequisites.of(next(0).template().skill())).isEmpty();
        assertThat(next(0).why()).startsWith("New: ");
    }

    @Test
    void aBeginnerBeginsWithCurrentFromPower() {
        assertThat(next(0).template().skill()).isEqualTo(Skill.CURRENT_FROM_POWER);
    }

    @Test
    void asksANewSkillTwiceInARowAndThenAnother() {
        final Choice first = next(0);
        answer(first, 0, true);
        final Choice second = next(0);
        answer(second, 0, true);
        final Choice third = next(0);

        assertThat(second.template().skill()).isEqualTo(first.template().skill());
        assertThat(third.template().skill()).isNotEqualTo(first.template().skill());
    }

    @Test
    void givesOneTwinAfterAnErrorAndNotASecond() {
        answer(next(0), 0, true);
        answer(next(0), 0, true);
        final Choice wrong = next(0);
        answer(wrong, 0, false);
        final Choice twin = next(0);
        answer(twin, 0, false);
        final Choice after = next(0);

        assertThat(twin.template()).isEqualTo(wrong.template());
        assertThat(twin.seed()).isNotEqualTo(wrong.seed());
        assertThat(twin.why()).contains("one like it");
        assertThat(after.template().skill()).isNotEqualTo(wrong.template().skill());
    }

    @Test
    void neverAsksOneSkillThreeTimesRunning() {
        for (int i = 0; i < 200; i++) {
            answer(next(i / 10), i / 10, i % 4 != 0);
        }
        for (int i = 2; i < history.size(); i++) {
            final Set<Skill> three =
                    EnumSet.of(
                            history.get(i - 2).skill(),
                            history.get(i - 1).skill(),
                            history.get(i).skill());
            final boolean twin = !history.get(i - 1).right() || !history.get(i - 2).right();
            assertThat(three.size() > 1 || twin).as("answers up to %d", i).isTrue();
        }
    }

    @Test
    void opensASkillOnlyWhenWhatItStandsOnGoesRight() {
        for (int i = 0; i < 150; i++) {
            final Choice choice = next(0);
            if (choice.why().startsWith("New: ")) {
                final Skills skills = Skills.of(history);
                assertThat(Prerequisites.of(choice.template().skill()))
                        .allMatch(needed -> skills.chance(needed, 0, 0) >= .7);
            }
            answer(choice, 0, true);
        }
        assertThat(history).extracting(Answered::skill).contains(Skill.FUSE_CHOICE);
    }

    @Test
    void reviewsWhatWorkedLooseButNotMoreThanTwoFifthsOfADay() {
        for (int i = 0; i < 60; i++) {
            answer(next(0), 0, true);
        }
        int reviews = 0;
        for (int i = 0; i < 20; i++) {
            final Choice choice = next(9);
            final Skills skills = Skills.of(history);
            reviews += skills.state(choice.template().skill(), 9).comesBack() ? 1 : 0;
            answer(choice, 9, true);
        }
        assertThat(reviews).isBetween(4, 8);
    }

    @Test
    void reviewsComeFirstAndFillTwoFifthsOfFiveProblems() {
        for (int i = 0; i < 60; i++) {
            answer(next(0), 0, true);
        }
        final List<Boolean> reviews = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            final Choice choice = next(9);
            reviews.add(choice.reason() == Reason.REVIEW);
            answer(choice, 9, true);
        }
        assertThat(reviews).containsExactly(true, true, false, false, false);
    }

    @Test
    void aTwinAfterAReviewThatWentWrongTakesNoOtherReviewsPlace() {
        for (int i = 0; i < 60; i++) {
            answer(next(0), 0, true);
        }
        answer(next(9), 9, false);
        assertThat(next(9).reason()).isEqualTo(Reason.TWIN);
        answer(next(9), 9, true);

        assertThat(next(9).reason()).isEqualTo(Reason.REVIEW);
    }

    @Test
    void aSkillAnsweredByTheWayIsNotNew() {
        for (int i = 0; i < 12; i++) {
            answer(next(0), 0, true);
        }
        final Template drop = of(Skill.DROP);
        final Template fuse = of(Skill.FUSE_CHOICE);
        history.add(
                new Answered(Skill.FUSE_CHOICE, now(0), true, false, false, 0, drop.fullId(), 1));
        assertThat(next(0).reason()).isNotEqualTo(Reason.OPENING_PAIR);

        answer(new Choice(of(Skill.CHARGING), 1, Reason.NEW), 0, true);
        assertThat(next(0).reason()).isEqualTo(Reason.OPENING_PAIR);
        assertThat(fuse.skill()).isNotEqualTo(next(0).template().skill());
    }

    private Template of(final Skill skill) {
        return templates.stream().filter(t -> t.skill() == skill).findFirst().orElseThrow();
    }

    @Test
    void ofAboutTheSameChanceTheOneAskedLongestAgoComes() {
        templates.removeIf(t -> t.skill() != Skill.DROP && t.skill() != Skill.CURRENT_FROM_POWER);
        for (int i = 0; i < 60; i++) {
            answer(next(i / 5), i / 5, true);
        }
        final List<String> last =
                history.subList(30, 60).stream()
                        .filter(a -> a.skill() == Skill.DROP)
                        .map(Answered::template)
                        .toList();
        assertThat(last).hasSizeGreaterThan(8);
        for (int i = 1; i < last.size(); i++) {
            assertThat(last.get(i)).as("%d of %s", i, last).isNotEqualTo(last.get(i - 1));
        }
    }

    @Test
    void leavesASkillForAnotherDayAfterEightTriesInVain() {
        templates.removeIf(t -> t.skill() != Skill.DROP && t.skill() != Skill.CHARGING);
        for (int i = 0; i < 40; i++) {
            final Choice choice = next(0);
            answer(choice, 0, choice.template().skill() != Skill.DROP);
        }
        final Choice choice = next(0);
        assertThat(choice.why()).doesNotContain("Still loose");
    }

    @Test
    void oneInEightIsAHuntOfWhatGoesRight() {
        int hunts = 0;
        for (int i = 0; i < 400; i++) {
            final Choice choice = next(i / 20);
            if (choice.hunt()) {
                hunts++;
                assertThat(Skills.of(history).chance(choice.template().skill(), i / 20, 0))
                        .isGreaterThanOrEqualTo(.6);
                assertThat(choice.why()).startsWith("One with a slip in it");
            }
            answer(choice, i / 20, true);
        }
        assertThat(hunts).isBetween(25, 60);
    }

    @Test
    void oneInSixIsAWholeJobOnceItsSumsGoRight() {
        final Task.Figures whole =
                new Task.Figures(
                        List.of(
                                new Task.Part("?", Quantity.CIRCUIT_CURRENT),
                                new Task.Part("?", Quantity.FUSE_FLOOR),
                                new Task.Part("?", Quantity.FUSE)));
        for (final Skill skill : List.of(Skill.FUSE_CHOICE, Skill.DROP)) {
            templates.add(
                    new Template(
                            "whole",
                            1,
                            skill.id(),
                            skill,
                            1,
                            "",
                            Drawing.LAMP,
                            Map.of(),
                            whole,
                            false));
        }
        for (int i = 0; i < 300; i++) {
            answer(next(i / 20), i / 20, true);
        }
        final long jobs =
                history.stream().skip(150).filter(a -> a.template().startsWith("whole")).count();

        assertThat(jobs).isBetween(12L, 40L);
    }

    @Test
    void goesBackToWhatAStuckSkillStandsOn() {
        templates.removeIf(t -> t.skill() != Skill.DROP && t.skill() != Skill.CURRENT_FROM_POWER);
        for (int i = 0; i < 6; i++) {
            answer(new Choice(templates.get(0), i + 1, Reason.CHOSEN), 0, true);
        }
        final Template drop =
                templates.stream().filter(t -> t.skill() == Skill.DROP).findFirst().orElseThrow();
        for (int i = 0; i < 8; i++) {
            answer(new Choice(drop, i / 2 + 1, Reason.CHOSEN), 0, false);
        }

        assertThat(next(0).template().skill()).isEqualTo(Skill.CURRENT_FROM_POWER);
        assertThat(next(0).why()).startsWith("First what it stands on: ");
    }

    @Test
    void afterAHardOneComesOneThatIsLikelyToGoRight() {
        templates.removeIf(t -> t.skill() != Skill.DROP && t.skill() != Skill.CURRENT_FROM_POWER);
        final Template easy = templates.get(0);
        for (int i = 0; i < 6; i++) {
            answer(new Choice(easy, i + 1, Reason.CHOSEN), 0, true);
        }
        final Template drop =
                templates.stream().filter(t -> t.skill() == Skill.DROP).findFirst().orElseThrow();
        answer(new Choice(drop, 1, Reason.CHOSEN), 0, false);
        assertThat(next(0).reason()).isEqualTo(Reason.TWIN);
        answer(new Choice(drop, 2, Reason.CHOSEN), 0, false);

        assertThat(next(0).reason()).isEqualTo(Reason.EASIER);
        assertThat(next(0).template().skill()).isEqualTo(easy.skill());
    }

    @Test
    void aSittingEndsOnWhatIsLikelyToGoRight() {
        for (int i = 0; i < 12; i++) {
            answer(next(0), 0, true);
        }
        final Moment late = new Moment(0, now(0).second() + 17 * 60);
        final Choice choice = Chooser.next(templates, Standing.of(history), late, 7).orElseThrow();

        assertThat(choice.reason()).isEqualTo(Reason.CLOSING);
        assertThat(choice.template().difficulty()).isEqualTo(-1);
        assertThat(Standing.of(history).sitting().mayEnd(now(0))).as("too short").isFalse();
        assertThat(Standing.of(history).sitting().mayEnd(late)).isTrue();
    }

    @Test
    void aSittingDoesNotEndOnAnError() {
        answer(next(0), 0, true);
        answer(next(0), 0, false);

        final Moment late = new Moment(0, now(0).second() + 15 * 60);
        assertThat(Standing.of(history).sitting().mayEnd(late)).isFalse();
    }

    @Test
    void aPauseBeginsAnotherSitting() {
        answer(next(0), 0, true);

        final Moment later = new Moment(0, now(0).second() + 31 * 60);
        assertThat(Standing.of(history).sitting().at(later).problems()).isZero();
        assertThat(next(0).reason()).isNotEqualTo(Reason.CLOSING);
    }

    @Test
    void theLearnerCanChooseAnySkillAtAnyTime() {
        answer(next(0), 0, true);
        final Choice chosen =
                Chooser.of(Skill.CHARGING, templates, Standing.of(history), now(0), 7)
                        .orElseThrow();

        assertThat(chosen.template().skill()).isEqualTo(Skill.CHARGING);
        assertThat(chosen.why()).isEqualTo("You chose it: charging");
    }

    @Test
    void huntsForOwnSlipsOfTheLastSevenDaysFirst() {
        for (int i = 0; i < 80; i++) {
            answer(next(i / 8), i / 8, true);
        }
        final Template drop =
                templates.stream().filter(t -> t.skill() == Skill.DROP).findFirst().orElseThrow();
        history.add(new Answered(Skill.DROP, now(10), false, false, true, 0, drop.fullId(), 1));
        for (int i = 0; i < 40; i++) {
            final Choice choice = next(11);
            final boolean mixes = history.get(history.size() - 1).skill() != Skill.DROP;
            if (choice.hunt() && mixes) {
                assertThat(choice.template().skill()).isEqualTo(Skill.DROP);
                assertThat(choice.reason()).isEqualTo(Reason.OWN_HUNT);
                return;
            }
            answer(choice, 11, true);
        }
        org.assertj.core.api.Assertions.fail("no hunt among forty");
    }

    @Test
    void everyReasonHasItsWords() {
        for (final Reason reason : Reason.values()) {
            assertThat(reason.text(templates.get(0), Skill.DROP)).isNotBlank().doesNotContain("{");
        }
    }

    @Test
    void aTwinHasTheSameTemplateAndAnotherSeed() {
        final Template template = TestBanks.template("heron-feeds", "till-current");
        final Problem problem = new Draw(new wireworthy.working.Solver()).problem(template, 5);
        final Choice twin = Chooser.twin(problem);

        assertThat(twin.template()).isEqualTo(template);
        assertThat(twin.seed()).isNotEqualTo(5);
        assertThat(twin).isEqualTo(Chooser.twin(problem));
    }

    @Test
    void noSkillStandsOnItselfByAnyRoad() {
        for (final Skill skill : Skill.values()) {
            final Set<Skill> below = EnumSet.noneOf(Skill.class);
            collect(skill, below);

            assertThat(below).doesNotContain(skill);
        }
    }

    private static void collect(final Skill skill, final Set<Skill> below) {
        for (final Skill needed : Prerequisites.of(skill)) {
            if (below.add(needed)) {
                collect(needed, below);
            }
        }
    }
}
