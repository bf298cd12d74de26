package wireworthy.window;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wireworthy.practice.Moment;
import wireworthy.practice.Sitting;
import wireworthy.practice.SkillState;
import wireworthy.practice.Skills;
import wireworthy.record.HeldDay;
import wireworthy.rules.Skill;
import wireworthy.window.stand.Stand;
import wireworthy.window.stand.StandTexts;

/** Where the one who learns here stands now, and what has to be said of the record. */
record OwnStand(OwnRecord record) {
    /** All there is to say, day by day. */
    Stand whole() {
        return of(record.held());
    }

    private Stand of(final List<HeldDay> days) {
        return Stand.of(record.standing(), days, record.lately(), record.today());
    }

    /** What is wrong with the record or the clock, in words. */
    List<String> notices() {
        final List<String> all = new ArrayList<>();
        final Stand now = of(List.of());
        record.trouble().ifPresent(all::add);
        now.clockBehind().ifPresent(last -> all.add(StandTexts.clock(now.today(), last)));
        return all;
    }

    /** How long the sitting has lasted where now is a good moment to stop; empty where not. */
    Optional<Duration> mayEnd() {
        final Moment now = record.moment();
        final Sitting sitting = record.standing().sitting().at(now);
        return sitting.mayEnd(now) ? Optional.of(sitting.lasted(now)) : Optional.empty();
    }

    /** How the loosest of several skills holds; empty until the record has been read. */
    Optional<String> state(final List<Skill> several) {
        if (!record.isOpen() || several.isEmpty()) {
            return Optional.empty();
        }
        final Skills skills = record.standing().skills();
        return several.stream()
                .map(skill -> skills.state(skill, record.today()))
                .min(Comparator.comparing(OwnStand::firmness))
                .map(SkillState::words);
    }

    private static int firmness(final SkillState state) {
        return switch (state) {
            case UNTRIED -> 0;
            case LOOSE -> 1;
            case WORKED_LOOSE -> 2;
            case DUE -> 3;
            case SNUG -> 4;
            case TIGHT -> 5;
        };
    }
}
