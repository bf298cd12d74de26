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
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.rules.Skill;
import wireworthy.window.stand.SkillStand;
import wireworthy.window.stand.Stand;
import wireworthy.window.stand.StandTexts;
import wireworthy.working.Solver;

/**
 * A week of evenings in Practice, as someone lives it: each problem says in one line why it came,
 * and the line is held against what was on record before, reviews against the days on which they
 * were due, and Where I stand against both.
 */
class SevenDaysTest {
    private static final int DAYS = 7;
    private static final int A_DAY = 14;
    private static final Instant BEGIN = Instant.parse("2026-03-01T19:00:00Z");
    private static final Duration EACH = Duration.ofSeconds(80);

    @TempDir private Path folder;

    private final MovedClock clock = new MovedClock();
    private final List<Came> came = new ArrayList<>();

    @ParameterizedTest
    @EnumSource(Practising.class)
    void reviewsComeWhenTheyShouldAndEachReasonIsTrue(final Practising person) {
        final Learner learner = new Learner(folder.resolve("week.sqlite"), new Solver(), clock);
        final PracticeModel model = new PracticeModel(learner);
        for (int day = 0; day < DAYS; day++) {
            clock.to(BEGIN.plus(Duration.ofDays(day)));
            evening(learner, model, person);
        }

        assertThat(came).hasSize(DAYS * A_DAY);
        assertThat(came).filteredOn(it -> it.why().startsWith("New: ")).isNotEmpty();
    }

    private void evening(
            final Learner learner, final PracticeModel model, final Practising person) {
        final Stand first = learner.stand().whole();
        final int before = came.size();
        for (int i = 0; i < A_DAY; i++) {
            one(learner, model, person);
        }
        final List<Came> today = came.subList(before, came.size());
        assertThat(today.stream().filter(Came::isReview).count())
                .isLessThanOrEqualTo(A_DAY * 2 / 5 + 1);
        if (!due(first).isEmpty()) {
            assertThat(today)
                    .extracting(it -> it.exercise().skill())
                    .containsAnyElementsOf(due(first));
        }
        agrees(first, learner.stand().whole());
    }

    private void one(final Learner learner, final PracticeModel model, final Practising person) {
        final Came now =
                Came.next(model, learner.stand().whole(), learner.record(), clock.instant());
        assertThat(now.isTrue()).as("%d: %s", came.size(), now).isTrue();
        came.add(now);
        person.does(model, came.size());
        clock.to(clock.instant().plus(EACH));
    }

    private static List<Skill> due(final Stand stand) {
        return Arrays.stream(Skill.values())
                .filter(it -> stand.of(it).due().orElse(Long.MAX_VALUE) <= stand.today())
                .toList();
    }

    /** What Where I stand says is what practice went by: what was due is done or still due. */
    private static void agrees(final Stand first, final Stand last) {
        for (final Skill skill : Skill.values()) {
            final SkillStand it = last.of(skill);
            final boolean due = it.due().orElse(Long.MAX_VALUE) <= last.today();
            assertThat(StandTexts.of(it, last.today()).toString())
                    .containsIgnoringCase(it.state().words());
            if (due) {
                assertThat(it.state().comesBack()).isTrue();
                assertThat(due(first)).contains(skill);
            }
        }
    }

    /** A clock that is moved by hand. */
    private static final class MovedClock extends Clock {
        private Instant now = BEGIN;

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
