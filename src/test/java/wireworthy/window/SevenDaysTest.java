package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.practice.Skills;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/** A week of evenings of someone who gets all but every seventh problem right. */
class SevenDaysTest {
    private static final int DAYS = 7;
    private static final int A_DAY = 14;
    private static final Duration EACH = Duration.ofSeconds(70);

    /** A problem that came, and how its skill stood then. */
    private record Came(long day, String why, Skill skill, int answers, long due) {}

    @TempDir private Path folder;

    private final MovedClock clock = new MovedClock();
    private final List<Came> came = new ArrayList<>();

    @Test
    void reviewsComeWhenTheyShouldAndTheReasonGivenIsTrue() {
        final Learner learner = new Learner(folder.resolve("week.sqlite"), new Solver(), clock);
        for (int day = 0; day < DAYS; day++) {
            evening(learner);
            clock.to(Instant.parse("2026-03-01T19:00:00Z").plus(Duration.ofDays(day + 1L)));
        }

        assertThat(came).hasSize(DAYS * A_DAY);
        assertThat(because("Due again")).isNotEmpty().allMatch(it -> it.due() <= it.day());
        assertThat(because("New: ")).isNotEmpty().allMatch(it -> it.answers() == 0);
        assertThat(because("Still new: ")).isNotEmpty().allMatch(it -> it.answers() == 1);
        assertThat(because("Still loose")).allMatch(it -> it.due() == Long.MAX_VALUE);
        assertThat(because("The last one went wrong")).isNotEmpty();
    }

    private List<Came> because(final String beginning) {
        return came.stream().filter(it -> it.why().startsWith(beginning)).toList();
    }

    private void evening(final Learner learner) {
        final long today = learner.record().today();
        final long due = due(learner.record().standing().skills(), today);
        final int before = came.size();
        for (int i = 0; i < A_DAY; i++) {
            work(learner, today);
        }
        final long reviews =
                came.subList(before, came.size()).stream()
                        .filter(it -> it.why().startsWith("Due again"))
                        .count();
        assertThat(reviews).as("reviews with %d due", due).isGreaterThanOrEqualTo(Math.min(due, 1));
    }

    private static long due(final Skills skills, final long today) {
        return Arrays.stream(Skill.values()).filter(it -> skills.due(it) <= today).count();
    }

    private void work(final Learner learner, final long today) {
        final Trainer.Next next = learner.next(Optional.empty()).orElseThrow();
        final Skills skills = learner.record().standing().skills();
        final Skill skill = next.exercise().skill();
        came.add(new Came(today, next.why(), skill, skills.answers(skill), skills.due(skill)));
        final boolean sound = came.size() % 7 > 0;
        final Attempt attempt = Attempt.at(Optional.empty(), "1", sound, Optional.empty());
        learner.keep(next.exercise(), attempt, skill, false, (double) EACH.toSeconds());
        clock.to(clock.instant().plus(EACH));
        final Duration lasted = EACH.multipliedBy((came.size() - 1) % A_DAY + 1L);
        assertThat(learner.mayEnd().isPresent())
                .as("offer to stop after %s", lasted)
                .isEqualTo(sound && lasted.compareTo(Duration.ofMinutes(12)) >= 0);
    }

    /** A clock that is moved by hand. */
    private static final class MovedClock extends Clock {
        private Instant now = Instant.parse("2026-03-01T19:00:00Z");

        void to(final Instant then) {
            now = then;
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(final ZoneId zone) {
            return this;
        }
    }
}
