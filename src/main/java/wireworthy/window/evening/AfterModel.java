package wireworthy.window.evening;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandInFolder;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.summary.Summary;
import wireworthy.evening.summary.SummaryCsv;
import wireworthy.evening.summary.SummaryPages;
import wireworthy.paper.PaperSize;
import wireworthy.record.WholeFile;
import wireworthy.window.Background;

/** What was handed in, read from a folder and summed up. Nothing of it is copied anywhere. */
final class AfterModel {
    /** Progress is said so many times at most. */
    private static final int STEPS = 50;

    private final Supplier<Shelf> shelf;
    private final IntSupplier seeds;
    private final Background background;
    private final ReadOnlyObjectWrapper<AfterState> state =
            new ReadOnlyObjectWrapper<>(new AfterState.Nothing());
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    /**
     * @param shelf read away from the window
     * @param seeds below {@value SheetPlan#SEEDS}, another each time
     */
    AfterModel(final Supplier<Shelf> shelf, final IntSupplier seeds, final Background background) {
        this.shelf = shelf;
        this.seeds = seeds;
        this.background = background;
    }

    ReadOnlyObjectProperty<AfterState> state() {
        return state.getReadOnlyProperty();
    }

    /** What has come of saving or deleting; empty where there is nothing to say. */
    ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }

    /** Reads a folder, and sums up the sheet most of its hand-ins belong to. */
    void read(final Path folder) {
        said.set("");
        state.set(new AfterState.Reading(0, 0));
        background.run(() -> reading(folder), state::set);
    }

    private AfterState reading(final Path folder) {
        try {
            return summedUp(HandInFolder.read(folder, this::progress), Optional.empty());
        } catch (final EveningProblem e) {
            return new AfterState.Refused(e.text());
        }
    }

    private void progress(final int files, final int all) {
        if (files % Math.max(1, all / STEPS) == 0) {
            background.meanwhile(() -> state.set(new AfterState.Reading(files, all)));
        }
    }

    /** Sums up another sheet of the same folder. */
    void choose(final String mark) {
        if (state.get() instanceof AfterState.Read read) {
            background.run(() -> summedUp(read.folder(), Optional.of(mark)), state::set);
        }
    }

    private AfterState summedUp(final HandInFolder folder, final Optional<String> wanted) {
        final List<HandInFolder.Belonging> all = folder.sheets();
        final List<HandInFolder.Belonging> sheets =
                all.stream().filter(each -> sheet(each.mark()).isPresent()).toList();
        if (sheets.isEmpty()) {
            return none(folder, all);
        }
        final Sheet sheet = sheet(wanted.orElse(sheets.get(0).mark())).orElseThrow();
        final HandIns handIns = folder.of(sheet);
        final Summary summary = Summary.of(sheet, handIns.taken());
        return new AfterState.Read(folder, sheets, handIns, summary, summary.nextWeek(seeds));
    }

    private Optional<Sheet> sheet(final String mark) {
        try {
            return Optional.of(Sheet.marked(mark, shelf.get()));
        } catch (final EveningProblem e) {
            return Optional.empty();
        }
    }

    /** Where no sheet can be made again, it is said why of the one that most belong to. */
    private AfterState none(final HandInFolder folder, final List<HandInFolder.Belonging> sheets) {
        return sheets.stream()
                .limit(1)
                .map(HandInFolder.Belonging::mark)
                .flatMap(mark -> trouble(mark).map(e -> none(folder, mark, e)).stream())
                .findFirst()
                .orElseGet(() -> none(folder, "", folder.leftOut()));
    }

    private static AfterState none(
            final HandInFolder folder, final String mark, final EveningProblem trouble) {
        return none(folder, trouble.text(), folder.leftOut(mark, trouble));
    }

    private static AfterState none(
            final HandInFolder folder, final String why, final List<HandIns.LeftOut> leftOut) {
        return new AfterState.None(folder.folder(), why, leftOut, folder.damaged());
    }

    private Optional<EveningProblem> trouble(final String mark) {
        try {
            Sheet.marked(mark, shelf.get());
            return Optional.empty();
        } catch (final EveningProblem e) {
            return Optional.of(e);
        }
    }

    /** Writes the summary to print. */
    void savePdf(final Path file, final PaperSize size) {
        save(file, summary -> SummaryPages.pdf(summary, size));
    }

    /** Writes the summary as a spreadsheet. */
    void saveCsv(final Path file) {
        save(file, summary -> SummaryCsv.text(summary).getBytes(StandardCharsets.UTF_8));
    }

    private void save(final Path file, final Function<Summary, byte[]> content) {
        if (state.get() instanceof AfterState.Read read) {
            background.run(() -> written(file, content.apply(read.summary())), said::set);
        }
    }

    private static String written(final Path file, final byte[] content) {
        try {
            WholeFile.write(file, content);
            return AfterTexts.of("saved", "file", file);
        } catch (final IOException e) {
            return AfterTexts.of("not-saved", "file", file);
        }
    }

    /** How many files there are to delete: those of the sheet, or damaged ones of none. */
    int deletable() {
        return files().size();
    }

    /** Those of them that are damaged, by name. */
    List<String> damaged() {
        if (state.get() instanceof AfterState.None none) {
            return none.damaged();
        }
        return state.get() instanceof AfterState.Read read
                ? read.folder().damaged(read.summary().sheet().mark())
                : List.of();
    }

    private List<Path> files() {
        if (state.get() instanceof AfterState.None none) {
            return none.damaged().stream().map(none.folder()::resolve).toList();
        }
        return state.get() instanceof AfterState.Read read
                ? read.folder().files(read.summary().sheet().mark())
                : List.of();
    }

    /** Deletes them from the folder for good, and forgets what was read. */
    void delete() {
        final List<Path> files = files();
        if (!files.isEmpty()) {
            background.run(
                    () -> deleted(files),
                    words -> {
                        state.set(new AfterState.Nothing());
                        said.set(words);
                    });
        }
    }

    private static String deleted(final List<Path> files) {
        final List<String> kept = new ArrayList<>();
        for (final Path file : files) {
            try {
                Files.deleteIfExists(file);
            } catch (final IOException e) {
                kept.add(String.valueOf(file.getFileName()));
            }
        }
        return kept.isEmpty()
                ? AfterTexts.of("deleted", "count", files.size())
                : AfterTexts.of("not-deleted", "files", String.join(", ", kept));
    }
}
