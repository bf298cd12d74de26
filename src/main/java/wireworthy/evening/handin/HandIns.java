package wireworthy.evening.handin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import wireworthy.evening.Asked;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;

/**
 * What was handed in for a sheet. Every file of the folder is in one of the two lists.
 *
 * @param taken in the order of the learners' numbers, one each
 * @param leftOut what does not count, in the order of the names
 */
public record HandIns(List<HandIn> taken, List<LeftOut> leftOut) {
    private static final int MOST_FILES = 5_000;

    public HandIns {
        taken = List.copyOf(taken);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A file that does not count.
     *
     * @param what why, without a full stop
     * @param remedy what to do, without a full stop
     */
    public record LeftOut(String file, String what, String remedy) {
        /** For people. */
        public String text() {
            return file + ": " + what + ". " + remedy + ".";
        }
    }

    private record Found(String file, HandIn handIn) {}

    /**
     * Reads a folder; nothing in it is changed.
     *
     * @throws EveningProblem where the folder itself can't be read
     */
    public static HandIns read(final Path folder, final Sheet sheet) {
        final List<LeftOut> leftOut = new ArrayList<>();
        final Map<Integer, Found> taken = new TreeMap<>();
        for (final Path file : files(folder)) {
            final String name = String.valueOf(file.getFileName());
            try {
                final HandIn handIn = HandInFile.read(file);
                belongs(handIn, sheet);
                take(new Found(name, handIn), taken, leftOut);
            } catch (final EveningProblem e) {
                leftOut.add(new LeftOut(name, e.what(), e.remedy()));
            }
        }
        leftOut.sort(Comparator.comparing(LeftOut::file));
        return new HandIns(taken.values().stream().map(Found::handIn).toList(), leftOut);
    }

    private static List<Path> files(final Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            final List<Path> all = files.sorted().toList();
            if (all.size() > MOST_FILES) {
                throw new EveningProblem(
                        folder + " holds more than " + MOST_FILES + " files",
                        "Put the hand-ins of one evening into a folder of their own");
            }
            return all;
        } catch (final IOException | UncheckedIOException e) {
            throw new EveningProblem(
                    folder + " can't be read", "Check that it is there and may be read");
        }
    }

    private static void belongs(final HandIn handIn, final Sheet sheet) {
        if (!handIn.mark().equals(sheet.mark())) {
            throw new EveningProblem(
                    "it belongs to the sheet " + handIn.mark(), "Read it with that sheet");
        }
        for (final Reply reply : handIn.replies()) {
            if (reply.problem() > sheet.problems()
                    || reply.typed().size()
                            != Asked.count(sheet.templates().get(reply.problem() - 1))) {
                throw new EveningProblem(
                        "it answers what problem " + reply.problem() + " does not ask",
                        "Use the same version on all laptops");
            }
        }
    }

    /** Of two by one learner the one changed last counts. */
    private static void take(
            final Found found, final Map<Integer, Found> taken, final List<LeftOut> leftOut) {
        final int learner = found.handIn().learner();
        final Found before = taken.get(learner);
        if (before == null) {
            taken.put(learner, found);
            return;
        }
        final boolean later = found.handIn().changed().isAfter(before.handIn().changed());
        final Found counts = later ? found : before;
        taken.put(learner, counts);
        leftOut.add(
                new LeftOut(
                        later ? before.file() : found.file(),
                        "learner " + learner + " also handed in " + counts.file(),
                        "That one counts, as it is no older; nothing need be done"));
    }
}
