package wireworthy.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import wireworthy.record.Answer;
import wireworthy.record.RecordFile;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** A learner's record as the tests want it, all of one evening. */
final class Evenings {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T19:00:00Z"), ZoneOffset.UTC);

    private Evenings() {}

    /** Puts answers to a skill on record, all right and without help: 2 leave it loose, 6 snug. */
    static void right(final Path file, final Skill skill, final int times) {
        try (RecordFile record = RecordFile.open(file)) {
            for (int i = 0; i < times; i++) {
                record.keep(answer(skill, i));
            }
        }
    }

    private static Answer answer(final Skill skill, final int number) {
        return new Answer(
                CLOCK.instant(),
                CLOCK.instant().getEpochSecond() / 86_400,
                "me",
                "another-bank",
                1,
                skill.id(),
                number,
                skill,
                0,
                Optional.of(Quantity.DROP),
                "0.5 V",
                "0.5 V",
                Optional.of(true),
                false,
                List.of(),
                List.of(),
                20);
    }

    /** What is on record for one set of numbers, oldest first. */
    static List<Answer> kept(final Path file, final String bank, final long seed) {
        try (RecordFile record = RecordFile.open(file)) {
            return record.answers("me").stream()
                    .filter(answer -> answer.seed() == seed && answer.bank().equals(bank))
                    .toList();
        }
    }
}
