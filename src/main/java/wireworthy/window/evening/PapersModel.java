package wireworthy.window.evening;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.Sheet;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.evening.handin.SheetFile;
import wireworthy.evening.print.SheetPages;
import wireworthy.evening.wish.Wish;
import wireworthy.record.WholeFile;
import wireworthy.window.Background;

/** The papers of a sheet, made side by side, away from the window's thread. */
final class PapersModel {
    /** What was said last, and whether it is to be seen to. */
    record Said(String text, boolean trouble) {
        static final Said NOTHING = new Said("", false);
    }

    private final BegunSheets here;
    private final Background background;
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);

    /**
     * @param here keeps the sheet, so that it can be chosen on this machine without its mark
     */
    PapersModel(final BegunSheets here, final Background background) {
        this.here = here;
        this.background = background;
    }

    /** Whether papers are being made. */
    ReadOnlyBooleanProperty busy() {
        return busy.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Said> said() {
        return said.getReadOnlyProperty();
    }

    /**
     * Makes sheets, key, slip finder and the file for the laptops in a folder.
     *
     * @param chosenFor stands on the papers
     */
    void make(final Sheet sheet, final Wish wish, final ChosenFor chosenFor, final Path folder) {
        busy.set(true);
        said.set(new Said(EveningTexts.of("papers.making"), false));
        background.run(
                () -> made(file(sheet, wish), onPaper(sheet, wish, chosenFor), folder),
                now -> {
                    said.set(now);
                    busy.set(false);
                });
    }

    private static SheetFile file(final Sheet sheet, final Wish wish) {
        return new SheetFile(sheet.mark(), wish.handout().explained(), wish.who().learners());
    }

    private static Supplier<SheetPages.Papers> onPaper(
            final Sheet sheet, final Wish wish, final ChosenFor chosenFor) {
        return () ->
                new SheetPages(sheet, wish.who().learners(), wish.handout().paper(), chosenFor)
                        .all();
    }

    /** Says no more of papers made before: there is another sheet now. */
    void forget() {
        if (!busy.get()) {
            said.set(Said.NOTHING);
        }
    }

    private Said made(
            final SheetFile file, final Supplier<SheetPages.Papers> made, final Path folder) {
        final SheetPages.Papers papers = made.get();
        final String name = "sheet-" + file.mark();
        try {
            WholeFile.write(folder.resolve(name + "-sheets.pdf"), papers.sheets());
            WholeFile.write(folder.resolve(name + "-key.pdf"), papers.key());
            WholeFile.write(folder.resolve(name + "-slip-finder.pdf"), papers.slipFinder());
            file.write(folder.resolve(name + ".json"));
        } catch (final IOException e) {
            return new Said(EveningTexts.of("papers.not", "folder", folder), true);
        }
        KnownSheet.keep(file, here);
        return new Said(EveningTexts.of("papers.done", "folder", folder), false);
    }
}
