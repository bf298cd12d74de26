package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.practice.Answered;
import wireworthy.practice.Moment;
import wireworthy.practice.SkillState;
import wireworthy.practice.Skills;
import wireworthy.practice.Standing;
import wireworthy.rules.Skill;

/** Where a person stands is kept up answer by answer, and is what all answers together give. */
class StandingTest {
    private static final Instant EVENING = Instant.parse("2026-03-04T19:30:00Z");

    private @TempDir Path folder = Path.of("");
    private Path file = Path.of("");

    @BeforeEach
    void nameFile() {
        file = folder.resolve("record.sqlite");
    }

    private static Answer answer(final int day, final long seed, final boolean sound) {
        return Answers.unaided(EVENING.plus(Duration.ofDays(day)).plusSeconds(seed), seed, sound);
    }

    private static Standing anew(final RecordFile record) {
        final List<Answered> all = new ArrayList<>();
        record.answers("robin").forEach(each -> StandingRows.waiting(each).ifPresent(all::add));
        return Standing.of(all);
    }

    @Test
    void isTheSameAnswerByAnswerAfterANewStartAndAllAtOnce() {
        try (RecordFile record = RecordFile.open(file)) {
            for (int i = 0; i < 90; i++) {
                record.keep(answer(i / 8, i, i % 5 != 0));
                assertThat(record.standing("robin").skills().answers()).isEqualTo(i + 1);
            }
            assertThat(record.standing("robin")).isEqualTo(anew(record));
        }
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.standing("robin")).isEqualTo(anew(record));
        }
    }

    @Test
    void nobodyStandsAnywhereBeforeTheFirstAnswer() {
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.standing("robin")).isEqualTo(Standing.NONE);
            assertThat(record.days("robin")).isEmpty();
        }
    }

    @Test
    void aSecondTryAtTheSameNumbersAndWhatCannotBeReadSayNothingNew() {
        try (RecordFile record = RecordFile.open(file)) {
            record.keep(Answers.unreadable(7));
            record.keep(answer(0, 7, false));
            assertThat(record.standing("robin").skills().answers()).isEqualTo(1);
            record.keep(answer(1, 7, true));
            record.keep(answer(1, 8, true));

            assertThat(record.standing("robin").lately())
                    .extracting(Answered::seed, Answered::right)
                    .containsExactly(
                            org.assertj.core.groups.Tuple.tuple(7L, false),
                            org.assertj.core.groups.Tuple.tuple(8L, true));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 3, 24, 7 * 24, 3 * 365 * 24, 60 * 365 * 24})
    void aClockSetBackByHoursLosesNoAnswerAndTheirOrderStays(final long hours) {
        try (RecordFile record = RecordFile.open(file)) {
            for (int i = 0; i < 4; i++) {
                record.keep(answer(9, i, true));
                record.standing("robin");
            }
            for (int i = 4; i < 8; i++) {
                final Instant early =
                        EVENING.plus(Duration.ofDays(9)).minus(Duration.ofHours(hours));
                record.keep(Answers.unaided(early.plusSeconds(i), i, i % 2 > 0));
            }
            record.keep(answer(9, 8, true));
            record.keep(answer(10, 9, true));

            assertThat(record.answers("robin"))
                    .extracting(Answer::seed)
                    .containsExactly(0L, 1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L, 9L);
            assertThat(record.last("robin", 3))
                    .extracting(Answer::seed)
                    .containsExactly(7L, 8L, 9L);
            assertThat(record.standing("robin")).isEqualTo(anew(record));
        }
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.standing("robin")).isEqualTo(anew(record));
        }
    }

    @Test
    void aClockSetBackMakesNothingDueBeforeItsDay() {
        try (RecordFile record = RecordFile.open(file)) {
            for (int i = 0; i < 6; i++) {
                record.keep(answer(9, i, true));
            }
            final long due = record.standing("robin").skills().due(Skill.DROP);
            for (int i = 6; i < 8; i++) {
                record.keep(answer(2, i, true));
            }
            final Skills skills = record.standing("robin").skills();

            assertThat(due).isEqualTo(day(10));
            assertThat(skills.due(Skill.DROP)).isEqualTo(due);
            assertThat(skills.state(Skill.DROP, day(2))).isEqualTo(SkillState.SNUG);
            assertThat(skills.state(Skill.DROP, day(9))).isEqualTo(SkillState.SNUG);
            assertThat(skills.state(Skill.DROP, day(10))).isEqualTo(SkillState.DUE);
        }
    }

    private static long day(final int number) {
        return Moment.of(EVENING, ZoneOffset.UTC).day() + number;
    }

    @Test
    void answersOfAnotherProgramOnTheSameRecordCount() {
        try (RecordFile one = RecordFile.open(file);
                RecordFile other = RecordFile.open(file)) {
            for (int i = 0; i < 20; i++) {
                (i % 2 == 0 ? one : other).keep(answer(0, i, true));
                one.standing("robin");
                other.standing("robin");
            }
            assertThat(one.standing("robin")).isEqualTo(anew(one));
            assertThat(other.standing("robin")).isEqualTo(anew(one));
            assertThat(one.days("robin")).singleElement().extracting(SkillDay::tries).isEqualTo(20);
        }
    }

    @Test
    void daysTellHowASkillStoodOverTime() {
        try (RecordFile record = RecordFile.open(file)) {
            for (int i = 0; i < 6; i++) {
                record.keep(answer(0, i, true));
                record.days("robin");
            }
            record.keep(answer(1, 6, false));

            final List<SkillDay> days = record.days("robin");
            assertThat(days).extracting(SkillDay::skill).containsOnly(Skill.DROP);
            assertThat(days).extracting(SkillDay::tries).containsExactly(6, 1);
            assertThat(days).extracting(SkillDay::unaided).containsExactly(6, 0);
            assertThat(record.held("robin"))
                    .extracting(HeldDay::day)
                    .containsExactlyElementsOf(days.stream().map(SkillDay::day).toList());
            assertThat(record.held("robin"))
                    .allMatch(it -> it.held().size() + it.others().size() == 1)
                    .extracting(it -> it.held().contains(Skill.DROP))
                    .containsExactlyElementsOf(days.stream().map(StandingTest::holds).toList());
            assertThat(days.get(0).state()).isEqualTo(SkillState.SNUG);
        }
    }

    private static boolean holds(final SkillDay day) {
        return day.state() == SkillState.SNUG || day.state() == SkillState.TIGHT;
    }
}
