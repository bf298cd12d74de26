package wireworthy.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.HandInFile;
import wireworthy.evening.handin.HandInFolder;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.handin.Reply;
import wireworthy.evening.summary.Summary;
import wireworthy.rules.Skill;

/**
 * Reads 1,000 hand-ins of 12 problems each, no two alike, from a folder that is made for it, and
 * says the time. As a sheet has at most 64 learners they belong to 16 sheets; each is summed up.
 */
public final class HandInReading {
    private static final int FILES = 1_000;
    private static final int PROBLEMS = 12;
    private static final double NANOS = 1e9;

    private HandInReading() {}

    public static void main(final String[] arguments) throws IOException {
        final Path folder = Files.createTempDirectory("hand-ins");
        final Shelf shelf = Shelf.builtIn();
        final List<Sheet> sheets = new ArrayList<>();
        for (int made = 0; made < FILES; made += SheetPlan.MOST_LEARNERS) {
            final Sheet sheet = sheet(sheets.size(), shelf);
            sheets.add(sheet);
            final int learners = Math.min(SheetPlan.MOST_LEARNERS, FILES - made);
            for (int learner = 1; learner <= learners; learner++) {
                HandInFile.write(folder, handIn(sheet, learner));
            }
        }
        measure(folder, sheets);
    }

    private static void measure(final Path folder, final List<Sheet> sheets) {
        final long start = System.nanoTime();
        final HandInFolder read = HandInFolder.read(folder, (files, all) -> {});
        final List<HandIns> counted = sheets.stream().map(read::of).toList();
        final long done = System.nanoTime();
        final int taken = counted.stream().mapToInt(each -> each.taken().size()).sum();
        for (int i = 0; i < sheets.size(); i++) {
            Summary.of(sheets.get(i), counted.get(i).taken());
        }
        System.out.printf(
                Locale.ROOT,
                "%d hand-ins of %d sheets read: %.2f s; all sheets summed up: %.2f s more%n",
                taken,
                read.sheets().size(),
                (done - start) / NANOS,
                (System.nanoTime() - done) / NANOS);
    }

    private static Sheet sheet(final int seed, final Shelf shelf) {
        final Pick pick = Pick.BySkills.of(EnumSet.allOf(Skill.class), PROBLEMS);
        return Sheet.of(new SheetPlan(pick, true, SheetPlan.MOST_LEARNERS, false, seed), shelf);
    }

    /** Right at every other problem. */
    private static HandIn handIn(final Sheet sheet, final int learner) {
        final Instant now = Instant.EPOCH.plusSeconds(learner);
        HandIn handIn = HandIn.begun(sheet.mark(), learner, "", now);
        for (int problem = 1; problem <= PROBLEMS; problem++) {
            final boolean right = problem % 2 == 0;
            final List<String> typed =
                    Asked.of(sheet.exercise(learner, problem)).stream()
                            .map(asked -> right ? asked.right() : "4.5 A")
                            .toList();
            handIn = handIn.with(new Reply(problem, typed, false, now));
        }
        return handIn;
    }
}
