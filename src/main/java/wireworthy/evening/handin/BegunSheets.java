package wireworthy.evening.handin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wireworthy.evening.EveningProblem;
import wireworthy.record.WholeFile;

/**
 * What is being answered on this machine: the sheet files, and for each learner what was put down.
 */
public final class BegunSheets {
    private static final int MOST = 500;
    private static final int MOST_SHEETS = 6;

    private final Path folder;

    public BegunSheets(final Path folder) {
        this.folder = folder;
    }

    /**
     * Answers that were begun here, with the sheet they belong to.
     *
     * @param handedIn whether they were handed in from here
     */
    public record Begun(SheetFile sheet, HandIn handIn, boolean handedIn) {}

    /**
     * Keeps a sheet, so that it can be gone on with.
     *
     * @throws IOException where that can't be done
     */
    public void keep(final SheetFile sheet) throws IOException {
        sheet.write(sheetFile(sheet.mark()));
    }

    /** The sheets that were made or opened on this machine, the last one first. */
    public List<SheetFile> sheets() {
        return files("sheet-.*\\.json").stream()
                .sorted(Comparator.comparing(BegunSheets::changed).reversed())
                .limit(MOST_SHEETS)
                .flatMap(file -> sheet(file).stream())
                .toList();
    }

    /** The sheet of a mark, where it was made or opened on this machine. */
    public Optional<SheetFile> sheet(final String mark) {
        return sheet(sheetFile(mark)).filter(it -> it.mark().equals(mark));
    }

    private static Optional<SheetFile> sheet(final Path file) {
        try {
            return Optional.of(SheetFile.read(file));
        } catch (final EveningProblem e) {
            return Optional.empty();
        }
    }

    private static FileTime changed(final Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (final IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    /**
     * Keeps what was put down. On disk when it returns.
     *
     * @throws IOException where that can't be done; what was kept before is as it was
     */
    public void keep(final HandIn handIn) throws IOException {
        HandInFile.write(folder, handIn);
    }

    /** What a learner put down before; what can't be read is put aside. */
    public Optional<HandIn> of(final String mark, final int learner) {
        final Path file = folder.resolve(HandInFile.name(mark, learner));
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(HandInFile.read(file));
        } catch (final EveningProblem e) {
            aside(file);
            return Optional.empty();
        }
    }

    private static void aside(final Path file) {
        try {
            Files.move(file, file.resolveSibling(file.getFileName() + ".damaged"));
        } catch (final IOException e) {
            throw EveningProblem.of("begun.damaged", "file", file);
        }
    }

    /** All that was begun here and can be gone on with, what was changed last first. */
    public List<Begun> all() {
        final List<Begun> all = new ArrayList<>();
        for (final Path file : files("hand-in-.*\\.json")) {
            begun(file).ifPresent(all::add);
        }
        all.sort((a, b) -> b.handIn().changed().compareTo(a.handIn().changed()));
        return all;
    }

    private List<Path> files(final String called) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches(called))
                    .limit(MOST)
                    .toList();
        } catch (final IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    private Optional<Begun> begun(final Path file) {
        try {
            final HandIn handIn = HandInFile.read(file);
            return Optional.of(
                    new Begun(
                            SheetFile.read(sheetFile(handIn.mark())), handIn, wasHandedIn(handIn)));
        } catch (final EveningProblem e) {
            return Optional.empty();
        }
    }

    /** The marks of sheets that are being answered here and are not handed in yet. */
    public List<String> unfinished() {
        return all().stream()
                .filter(each -> !each.handedIn())
                .map(each -> each.handIn().mark())
                .distinct()
                .toList();
    }

    /**
     * Keeps that answers were handed in.
     *
     * @throws IOException where that can't be done
     */
    public void handedIn(final HandIn handIn) throws IOException {
        WholeFile.write(handedInFile(handIn), new byte[0]);
    }

    private Path handedInFile(final HandIn handIn) {
        final String name = HandInFile.name(handIn.mark(), handIn.learner());
        return folder.resolve(name.replace(".json", ".handed-in"));
    }

    /** Whether answers were handed in from here. */
    public boolean wasHandedIn(final HandIn handIn) {
        return Files.exists(handedInFile(handIn));
    }

    /**
     * Takes away what a learner put down here, what was damaged with it, and the sheet with its
     * code names where nobody else answers it here.
     *
     * @throws IOException where that can't be done
     */
    public void forget(final HandIn handIn) throws IOException {
        final String name = HandInFile.name(handIn.mark(), handIn.learner());
        delete(Pattern.quote(name) + ".*");
        Files.deleteIfExists(handedInFile(handIn));
        final String others = Pattern.quote(HandInFile.begins(handIn.mark())) + "\\d+\\.json.*";
        if (files(others).isEmpty()) {
            Files.deleteIfExists(sheetFile(handIn.mark()));
        }
    }

    /**
     * Takes away the sheets that were made or opened here, with their code names; not those that
     * somebody answers here.
     *
     * @throws IOException where that can't be done
     */
    public void forgetSheets() throws IOException {
        final List<String> answered = all().stream().map(each -> each.handIn().mark()).toList();
        for (final Path file : files("sheet-.*\\.json.*")) {
            if (answered.stream().noneMatch(mark -> sheetFile(mark).equals(file))) {
                Files.deleteIfExists(file);
            }
        }
    }

    private void delete(final String called) throws IOException {
        for (final Path file : files(called)) {
            Files.deleteIfExists(file);
        }
    }

    private Path sheetFile(final String mark) {
        return folder.resolve("sheet-" + mark.replaceAll("[^0-9A-Z-]", "") + ".json");
    }
}
