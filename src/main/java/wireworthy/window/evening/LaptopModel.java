package wireworthy.window.evening;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.HandedIn;
import wireworthy.evening.handin.SheetFile;
import wireworthy.window.Background;

/** A sheet at a laptop, from its mark to the file handed in, without a control. */
final class LaptopModel {
    /** How far it is. */
    sealed interface Stage {}

    /**
     * A sheet is to be opened, or one begun here gone on with.
     *
     * @param forgotten whose answers were just taken from this machine; empty where nobody's were
     */
    record Opening(List<BegunSheets.Begun> begun, List<KnownSheet> known, String forgotten)
            implements Stage {}

    /** Who answers it? */
    record Who(SheetFile file, Sheet sheet) implements Stage {}

    /** It is answered. */
    record Working(SheetWork work) implements Stage {}

    /** It is handed in. */
    record Ending(SheetWork work, Optional<HandedIn> handedIn) implements Stage {}

    private final EveningDesk desk;
    private final Background background;
    private final BegunSheets kept;
    private final ReadOnlyObjectWrapper<Stage> stage =
            new ReadOnlyObjectWrapper<>(new Opening(List.of(), List.of(), ""));
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");

    LaptopModel(final EveningDesk desk, final Background background) {
        this.desk = desk;
        this.background = background;
        kept = desk.begun();
    }

    ReadOnlyObjectProperty<Stage> stage() {
        return stage.getReadOnlyProperty();
    }

    /** What is the matter, in words; empty where nothing is. */
    ReadOnlyStringProperty trouble() {
        return trouble.getReadOnlyProperty();
    }

    /** Looks what was begun here. */
    void begin() {
        trouble.set("");
        background.run(() -> opening(""), stage::set);
    }

    private Opening opening(final String forgotten) {
        return new Opening(kept.all(), KnownSheet.of(kept, desk.shelf()), forgotten);
    }

    /**
     * Opens the sheet of a mark as its file has it, where that was here; otherwise with numbers for
     * names, explained at the end.
     */
    void openMark(final String mark) {
        act(
                () -> {
                    final String read = Sheet.marked(mark, desk.shelf()).mark();
                    return kept.sheet(read)
                            .map(it -> who(read, it.explained(), Optional.of(it.names())))
                            .orElseGet(() -> who(read, Explained.AT_THE_END, Optional.empty()));
                });
    }

    /** Opens a sheet file. */
    void openFile(final Path path) {
        act(
                () -> {
                    final SheetFile file = SheetFile.read(path);
                    return who(file.mark(), file.explained(), Optional.of(file.names()));
                });
    }

    private Stage who(
            final String mark, final Explained explained, final Optional<CodeNames> names) {
        final Sheet sheet = Sheet.marked(mark, desk.shelf());
        final CodeNames all = names.orElseGet(() -> CodeNames.numbers(sheet.learners()));
        return new Who(new SheetFile(sheet.mark(), explained, all), sheet);
    }

    /**
     * One of the learners begins, or goes on.
     *
     * @param name the code name as typed; empty where it is known, or there is none
     */
    void choose(final Who who, final int learner, final String name) {
        act(
                () -> {
                    final SheetFile file = who.file();
                    final CodeNames names = file.names().with(learner, name);
                    return work(
                            new SheetFile(file.mark(), file.explained(), names),
                            who.sheet(),
                            learner);
                });
    }

    /** Goes on with what was begun here; what is handed in, at the hand-in. */
    void goOn(final BegunSheets.Begun begun) {
        act(
                () -> {
                    final Working on =
                            work(
                                    begun.sheet(),
                                    Sheet.marked(begun.sheet().mark(), desk.shelf()),
                                    begun.handIn().learner());
                    return begun.handedIn() ? new Ending(on.work(), Optional.empty()) : on;
                });
    }

    private Working work(final SheetFile file, final Sheet sheet, final int learner) {
        try {
            kept.keep(file);
            final HandIn handIn =
                    kept.of(sheet.mark(), learner)
                            .map(before -> before.named(file.names().of(learner)))
                            .orElseGet(
                                    () ->
                                            HandIn.begun(
                                                    sheet.mark(),
                                                    learner,
                                                    file.names().of(learner),
                                                    desk.clock().instant()));
            kept.keep(handIn);
            return new Working(
                    new SheetWork(file, sheet.exercises(learner), handIn, kept, desk.clock()));
        } catch (final IOException e) {
            throw new EveningProblem(
                    EveningTexts.of("laptop.no-room", "folder", desk.folder().path()),
                    EveningTexts.of("laptop.no-room.do"));
        }
    }

    /** Comes to the end of a sheet. */
    void end(final SheetWork work) {
        trouble.set("");
        stage.set(new Ending(work, Optional.empty()));
    }

    /** Goes back to the problems. */
    void back(final SheetWork work) {
        trouble.set("");
        stage.set(new Working(work));
    }

    /** Hands in to a folder. */
    void handIn(final SheetWork work, final Path folder) {
        act(() -> new Ending(work, Optional.of(handedIn(work.handIn(), folder))));
    }

    private HandedIn handedIn(final HandIn handIn, final Path folder) {
        final HandedIn done = HandedIn.into(folder, handIn);
        try {
            kept.handedIn(handIn);
        } catch (final IOException e) {
            // It lies where it belongs; here it only stays among what is gone on with.
        }
        return done;
    }

    /** Shows what is right; nothing counts from then on. */
    void lookBack(final SheetWork work) {
        work.end();
        work.go(1);
        back(work);
    }

    /** Whether answers were handed in from this machine. */
    boolean wasHandedIn(final SheetWork work) {
        return kept.wasHandedIn(work.handIn());
    }

    /** Takes the answers from this machine. */
    void forget(final SheetWork work) {
        forget(work.handIn());
    }

    /** Takes somebody's answers from this machine, and says so. */
    void forget(final HandIn handIn) {
        act(
                () -> {
                    try {
                        kept.forget(handIn);
                        return opening(handIn.learner() + " " + handIn.name());
                    } catch (final IOException e) {
                        throw new EveningProblem(
                                EveningTexts.of("laptop.not-forgotten"),
                                EveningTexts.of("laptop.no-room.do"));
                    }
                });
    }

    private interface Action {
        Stage next();
    }

    /** Does it away from the window's thread; says what is the matter where it can't be done. */
    private void act(final Action action) {
        trouble.set("");
        background.run(() -> outcome(action), Runnable::run);
    }

    private Runnable outcome(final Action action) {
        try {
            final Stage next = action.next();
            return () -> stage.set(next);
        } catch (final EveningProblem e) {
            return () -> trouble.set(e.text());
        }
    }

    /** Where longer work is done. */
    Background background() {
        return background;
    }
}
