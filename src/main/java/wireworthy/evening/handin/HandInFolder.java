package wireworthy.evening.handin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.evening.Asked;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;

/** A folder of hand-ins, each file read once: of one sheet or of several, and what is none. */
public final class HandInFolder {
    private static final int MOST_FILES = 5_000;

    private final Path folder;
    private final List<Found> found = new ArrayList<>();
    private final List<HandIns.LeftOut> none = new ArrayList<>();

    private record Found(String file, HandIn handIn) {}

    /** Told how far the reading is. */
    @FunctionalInterface
    public interface Progress {
        /** So many files of all have been read. */
        void read(int files, int all);
    }

    /** A sheet that hand-ins belong to, and how many files there are of it. */
    public record Belonging(String mark, int files) {}

    private HandInFolder(final Path folder) {
        this.folder = folder;
    }

    /**
     * Reads a folder; nothing in it is changed.
     *
     * @throws EveningProblem where the folder itself can't be read
     */
    public static HandInFolder read(final Path folder, final Progress progress) {
        final HandInFolder read = new HandInFolder(folder);
        final List<Path> files = files(folder);
        for (int i = 0; i < files.size(); i++) {
            read.add(files.get(i));
            progress.read(i + 1, files.size());
        }
        return read;
    }

    private static List<Path> files(final Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            final List<Path> all = files.limit(MOST_FILES + 1L).sorted().toList();
            if (all.size() > MOST_FILES) {
                throw EveningProblem.of("folder.many", "folder", folder, "most", MOST_FILES);
            }
            return all;
        } catch (final IOException | UncheckedIOException e) {
            throw EveningProblem.of("folder.unread", "folder", folder);
        }
    }

    private void add(final Path file) {
        final String name = String.valueOf(file.getFileName());
        try {
            found.add(new Found(name, HandInFile.read(file)));
        } catch (final EveningProblem e) {
            none.add(new HandIns.LeftOut(name, e));
        }
    }

    /** The folder that was read. */
    public Path folder() {
        return folder;
    }

    /** The sheets that hand-ins belong to, the one with the most files first. */
    public List<Belonging> sheets() {
        final Map<String, Long> counts =
                found.stream()
                        .collect(
                                Collectors.groupingBy(
                                        each -> each.handIn().mark(),
                                        TreeMap::new,
                                        Collectors.counting()));
        return counts.entrySet().stream()
                .map(e -> new Belonging(e.getKey(), e.getValue().intValue()))
                .sorted(Comparator.comparingInt(each -> -each.files()))
                .toList();
    }

    /** The files of a sheet, whether they count or not, and those damaged that are called so. */
    public List<Path> files(final String mark) {
        final Stream<String> whole =
                found.stream().filter(each -> each.handIn().mark().equals(mark)).map(Found::file);
        return Stream.concat(whole, damaged(mark).stream()).map(folder::resolve).toList();
    }

    /** Files that can't be read, but are called as hand-ins: they hold answers, too. */
    public List<String> damaged() {
        return beginning(HandInFile.BEGINS);
    }

    /** Those of them that are called as hand-ins of a sheet. */
    public List<String> damaged(final String mark) {
        return beginning(HandInFile.begins(mark));
    }

    private List<String> beginning(final String begins) {
        return none.stream()
                .map(HandIns.LeftOut::file)
                .filter(file -> file.startsWith(begins))
                .filter(
                        file ->
                                Files.isRegularFile(
                                        folder.resolve(file), LinkOption.NOFOLLOW_LINKS))
                .toList();
    }

    /** What counts for a sheet, and why all else does not. */
    public HandIns of(final Sheet sheet) {
        final List<HandIns.LeftOut> leftOut = new ArrayList<>(none);
        final Map<Integer, Found> taken = new TreeMap<>();
        for (final Found each : found) {
            try {
                belongs(each.handIn(), sheet);
                take(each, taken, leftOut);
            } catch (final EveningProblem e) {
                leftOut.add(new HandIns.LeftOut(each.file(), e));
            }
        }
        return new HandIns(
                taken.values().stream().map(Found::handIn).toList(), HandIns.sorted(leftOut));
    }

    /** All files, where none of them belongs to a sheet. */
    public List<HandIns.LeftOut> leftOut() {
        return HandIns.sorted(none);
    }

    /** All files, where the sheet of some of them can't be made again. */
    public List<HandIns.LeftOut> leftOut(final String mark, final EveningProblem why) {
        final List<HandIns.LeftOut> all = new ArrayList<>(none);
        for (final Found each : found) {
            final boolean of = each.handIn().mark().equals(mark);
            all.add(new HandIns.LeftOut(each.file(), of ? why : other(each.handIn())));
        }
        return HandIns.sorted(all);
    }

    private static EveningProblem other(final HandIn handIn) {
        return EveningProblem.of("hand-in.other-sheet", "mark", handIn.mark());
    }

    private static void belongs(final HandIn handIn, final Sheet sheet) {
        if (!handIn.mark().equals(sheet.mark())) {
            throw other(handIn);
        }
        for (final Reply reply : handIn.replies()) {
            if (reply.problem() > sheet.problems()
                    || reply.typed().size()
                            != Asked.count(sheet.templates().get(reply.problem() - 1))) {
                throw EveningProblem.of("hand-in.not-asked", "problem", reply.problem());
            }
        }
    }

    private static boolean named(final Found one, final Found other) {
        return one.handIn().name().equalsIgnoreCase(other.handIn().name());
    }

    /** Of two by one learner the one changed last counts. */
    private static void take(
            final Found found,
            final Map<Integer, Found> taken,
            final List<HandIns.LeftOut> leftOut) {
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
                new HandIns.LeftOut(
                        later ? before.file() : found.file(),
                        EveningProblem.of(
                                named(before, found) ? "hand-in.twice" : "hand-in.two-people",
                                "learner",
                                learner,
                                "file",
                                counts.file())));
    }
}
