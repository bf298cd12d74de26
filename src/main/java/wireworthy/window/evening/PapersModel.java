package wireworthy.window.evening;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.evening.CodeNames;
import wireworthy.evening.Sheet;
import wireworthy.evening.handin.SheetFile;
import wireworthy.evening.print.SheetPages;
import wireworthy.evening.wish.Wish;
import wireworthy.record.WholeFile;
import wireworthy.window.Background;

/** The papers of a sheet as they are made: one after the other, away from the window's thread. */
final class PapersModel {
    /** What was said last, and whether it is to be seen to. */
    record Said(String text, boolean trouble) {
        static final Said NOTHING = new Said("", false);
    }

    private static final List<String> KINDS = List.of("sheets", "key", "slip-finder", "laptops");

    private final Background background;
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);

    PapersModel(final Background background) {
        this.background = background;
    }

    /** Whether papers are being made. */
    ReadOnlyBooleanProperty busy() {
        return busy.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Said> said() {
        return said.getReadOnlyProperty();
    }

    /** Makes sheets, key, slip finder and the file for the laptops in a folder. */
    void make(final Sheet sheet, final Wish wish, final Path folder) {
        busy.set(true);
        said.set(new Said(EveningTexts.of("papers.numbers"), false));
        final CodeNames names = wish.who().learners();
        background.run(
                () -> new SheetPages(sheet, names, wish.handout().paper()),
                pages -> next(new Job(sheet, wish, names, pages, folder), 0));
    }

    /** Says no more of papers made before: there is another sheet now. */
    void forget() {
        if (!busy.get()) {
            said.set(Said.NOTHING);
        }
    }

    private void next(final Job job, final int done) {
        if (done == KINDS.size()) {
            end(new Said(EveningTexts.of("papers.done", "folder", job.folder()), false));
            return;
        }
        said.set(new Said(EveningTexts.of("papers." + KINDS.get(done)), false));
        background.run(
                () -> job.write(KINDS.get(done)),
                trouble ->
                        trouble.ifPresentOrElse(
                                it -> end(new Said(it, true)), () -> next(job, done + 1)));
    }

    private void end(final Said last) {
        said.set(last);
        busy.set(false);
    }

    /** The papers of one sheet. */
    private record Job(Sheet sheet, Wish wish, CodeNames names, SheetPages pages, Path folder) {
        /** Writes one; says why it can't be written. */
        Optional<String> write(final String kind) {
            try {
                if (kind.equals("laptops")) {
                    new SheetFile(sheet.mark(), wish.handout().explained(), names)
                            .write(folder.resolve("sheet-" + sheet.mark() + ".json"));
                } else {
                    WholeFile.write(
                            folder.resolve("sheet-" + sheet.mark() + "-" + kind + ".pdf"),
                            pdf(kind));
                }
                return Optional.empty();
            } catch (final IOException e) {
                return Optional.of(EveningTexts.of("papers.not", "folder", folder));
            }
        }

        private byte[] pdf(final String kind) {
            return switch (kind) {
                case "sheets" -> pages.sheets();
                case "key" -> pages.key();
                default -> pages.slipFinder();
            };
        }
    }
}
