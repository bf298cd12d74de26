package wireworthy.window;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wireworthy.record.Answer;
import wireworthy.record.RecordFile;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** The record of someone who has practised now and then for three weeks before the evening. */
final class Weeks {
    private static final int DAY = 86_400;

    private final RecordFile record;
    private long number;

    private Weeks(final RecordFile record) {
        this.record = record;
    }

    /**
     * Some skills hold, drop has worked loose, fuse floor is loose with a slip that comes again.
     */
    static void practised(final Path file) {
        try (RecordFile record = RecordFile.open(file)) {
            final Weeks weeks = new Weeks(record);
            weeks.right(Skill.CURRENT_FROM_POWER, 21, 5);
            weeks.right(Skill.OUT_AND_BACK_LENGTH, 20, 5);
            weeks.right(Skill.DROP, 18, 6);
            weeks.right(Skill.UNITS_AND_PREFIXES, 15, 5);
            weeks.right(Skill.OUT_AND_BACK_LENGTH, 9, 4);
            weeks.right(Skill.CURRENT_FROM_POWER, 6, 4);
            weeks.right(Skill.CURRENT_FROM_POWER, 2, 4);
            weeks.right(Skill.RESISTANCE_OF_A_CABLE, 3, 1);
            weeks.right(Skill.ADDING_LOADS, 1, 5);
            weeks.right(Skill.OUT_AND_BACK_LENGTH, 1, 4);
            weeks.wrong(Skill.FUSE_FLOOR, 1, 3, "margin-left-out");
            weeks.wrong(Skill.CHARGING, 0, 9, "one-way-length");
        }
    }

    private void right(final Skill skill, final int daysAgo, final int times) {
        for (int i = 0; i < times; i++) {
            record.keep(answer(skill, daysAgo, true, List.of()));
        }
    }

    private void wrong(final Skill skill, final int daysAgo, final int times, final String slip) {
        for (int i = 0; i < times; i++) {
            record.keep(answer(skill, daysAgo, false, List.of(List.of(slip))));
        }
    }

    private Answer answer(
            final Skill skill,
            final int daysAgo,
            final boolean sound,
            final List<List<String>> slips) {
        number++;
        final Instant at =
                Evenings.CLOCK.instant().minusSeconds((long) daysAgo * DAY + 3 * 3_600 - number);
        return new Answer(
                at,
                Math.floorDiv(at.getEpochSecond(), DAY),
                "me",
                "another-bank",
                1,
                skill.id() + number % 2,
                number,
                skill,
                0,
                Optional.of(Quantity.DROP),
                "0.5 V",
                "0.5 V",
                Optional.of(sound),
                false,
                slips,
                List.of(),
                20);
    }
}
