package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import wireworthy.practice.Answered;
import wireworthy.practice.Moment;
import wireworthy.rules.Skill;

class AnsweredFromTest {
    private static final ZoneId SYDNEY = ZoneId.of("Australia/Sydney");
    private static final Instant LATE = Instant.parse("2026-03-04T14:30:00Z");

    @Test
    void takesTheDayOfThePlaceWhereTheLearnerIs() {
        assertThat(AnsweredFrom.of(List.of(Answers.at(LATE, 7, true)), SYDNEY))
                .containsExactly(
                        new Answered(
                                Skill.DROP,
                                new Moment(
                                        java.time.LocalDate.of(2026, 3, 5).toEpochDay(),
                                        LATE.getEpochSecond()),
                                true,
                                true,
                                true,
                                -1,
                                "voltage-drop/aisle-strips-drop",
                                7));
    }

    @Test
    void countsTheFirstTryAtEachSetOfNumbersAndNothingUnreadable() {
        final List<Answer> answers =
                List.of(
                        Answers.unreadable(7),
                        Answers.at(LATE, 7, false),
                        Answers.at(LATE, 7, true),
                        Answers.at(LATE, 8, true));

        assertThat(AnsweredFrom.of(answers, SYDNEY))
                .extracting(Answered::seed, Answered::right)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(7L, false),
                        org.assertj.core.groups.Tuple.tuple(8L, true));
    }
}
