package wireworthy.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.HandInFile;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.handin.Reply;
import wireworthy.rules.Skill;

/**
 * Reads 1,000 hand-ins of 12 problems each, from a folder that is made for it, and says the time.
 */
public final class HandInReading {
    private static final int FILES = 1_000;
    private static final int PROBLEMS = 12;
    private static final double NANOS = 1e9;

    private HandInReading() {}

    public static void main(final String[] arguments) throws IOException {
        final Path folder = Files.createTempDirectory("hand-ins");
        final Pick pick = Pick.BySkills.of(EnumSet.allOf(Skill.class), PROBLEMS);
        final Sheet sheet =
                Sheet.of(
                        new SheetPlan(pick, true, SheetPlan.MOST_LEARNERS, false, 7),
                        Shelf.builtIn());
        for (int i = 0; i < FILES; i++) {
            final Path file = HandInFile.write(folder, handIn(sheet, i));
            Files.move(file, folder.resolve("hand-in-" + i + ".json"));
        }
        final long start = System.nanoTime();
        final HandIns read = HandIns.read(folder, sheet);
        System.out.printf(
                Locale.ROOT,
                "%d taken, %d left out: %.2f s%n",
                read.taken().size(),
                read.leftOut().size(),
                (System.nanoTime() - start) / NANOS);
    }

    private static HandIn handIn(final Sheet sheet, final int number) {
        final int learner = number % SheetPlan.MOST_LEARNERS + 1;
        final Instant now = Instant.EPOCH.plusSeconds(number);
        HandIn handIn = HandIn.begun(sheet.mark(), learner, "", now);
        for (int problem = 1; problem <= PROBLEMS; problem++) {
            final int answers = Asked.count(sheet.templates().get(problem - 1));
            handIn =
                    handIn.with(
                            new Reply(problem, Collections.nCopies(answers, "4.5 A"), false, now));
        }
        return handIn;
    }
}
