package wireworthy.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** Answers of one learner, for the tests. */
final class Answers {
    private static final Instant EVENING = Instant.parse("2026-03-04T19:30:00.250Z");

    private Answers() {}

    static Answer numbered(final int number) {
        return answer(number, "0.526 V", Optional.of(false));
    }

    static Answer by(final String person, final int number) {
        return answer(person, number, "0.526 V", Optional.of(number % 3 > 0));
    }

    static Answer typed(final int number, final String text) {
        return answer(number, text, Optional.of(true));
    }

    static Answer unreadable(final int number) {
        return answer(number, "half a volt", Optional.empty());
    }

    static Answer unaided(final Instant when, final long seed, final boolean sound) {
        final Answer answer = answer(0, "0.5 V", Optional.of(sound));
        return new Answer(
                when,
                when.getEpochSecond() / 86_400,
                answer.person(),
                answer.bank(),
                answer.version(),
                answer.template(),
                seed,
                answer.skill(),
                answer.difficulty(),
                answer.asked(),
                answer.typed(),
                answer.understood(),
                answer.sound(),
                false,
                answer.slips(),
                answer.suspected(),
                answer.seconds());
    }

    private static Answer answer(
            final int number, final String typed, final Optional<Boolean> sound) {
        return answer("robin", number, typed, sound);
    }

    private static Answer answer(
            final String person,
            final int number,
            final String typed,
            final Optional<Boolean> sound) {
        return new Answer(
                EVENING.plusSeconds(number),
                EVENING.plusSeconds(number).getEpochSecond() / 86_400,
                person,
                "voltage-drop",
                1,
                "aisle-strips-drop",
                number,
                Skill.DROP,
                -1,
                Optional.of(Quantity.DROP_PERCENT),
                typed,
                "0.526 V",
                sound,
                true,
                List.of(List.of("one-way-only"), List.of("length-twice", "power-of-ten")),
                List.of(List.of("one-way-only", "power-of-ten")),
                12.5);
    }
}
