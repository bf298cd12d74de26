package wireworthy.window.evening;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.handin.SheetFile;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** What is to be thrown on the wall: the problems of a sheet, or some drawn on a skill. */
final class ProjectorSetup {
    private final EveningDesk desk;
    private final IntSupplier seeds;
    private final Background background;
    private final ReadOnlyObjectWrapper<Optional<Sheet>> sheet =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    private final ReadOnlyObjectWrapper<List<KnownSheet>> known =
            new ReadOnlyObjectWrapper<>(List.of());
    private boolean held;

    private record Opened(Optional<Sheet> sheet, boolean held, String trouble) {}

    /**
     * @param seeds below {@value SheetPlan#SEEDS}, another each time
     */
    ProjectorSetup(final EveningDesk desk, final IntSupplier seeds, final Background background) {
        this.desk = desk;
        this.seeds = seeds;
        this.background = background;
    }

    /** What was opened last. */
    ReadOnlyObjectProperty<Optional<Sheet>> sheet() {
        return sheet.getReadOnlyProperty();
    }

    /** Why nothing was opened; empty where it was. */
    ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }

    /** The sheets that were made or opened on this machine. */
    ReadOnlyObjectProperty<List<KnownSheet>> known() {
        return known.getReadOnlyProperty();
    }

    /** Whether what was opened is being answered on this machine, with the numbers of the wall. */
    boolean held() {
        return held;
    }

    /** The one who asks leads the class. */
    void lead() {
        held = false;
        sheet.get().ifPresent(desk::lead);
    }

    /** Looks which sheets there are on this machine. */
    void look() {
        background.run(() -> KnownSheet.of(desk.begun(), desk.shelf()), known::set);
    }

    /** Opens the sheet of a mark. */
    void mark(final String typed) {
        open(
                () -> {
                    final Sheet marked = Sheet.marked(typed, desk.shelf());
                    KnownSheet.keep(marked, desk.begun());
                    return marked;
                });
    }

    /** Opens a sheet from the file that goes to the laptops. */
    void file(final Path file) {
        open(
                () -> {
                    final SheetFile read = SheetFile.read(file);
                    final Sheet marked = Sheet.marked(read.mark(), desk.shelf());
                    KnownSheet.keep(read, desk.begun());
                    return marked;
                });
    }

    /** Problems on a skill, with numbers that stand on no sheet. */
    void skill(final Skill skill) {
        final Pick pick = Pick.BySkills.of(Set.of(skill), Pick.MOST_PROBLEMS);
        final SheetPlan plan = new SheetPlan(pick, false, 1, true, seeds.getAsInt());
        open(() -> Sheet.of(plan, desk.shelf()));
    }

    private void open(final Supplier<Sheet> opening) {
        background.run(() -> opened(opening), this::take);
    }

    private Opened opened(final Supplier<Sheet> opening) {
        try {
            final Sheet now = opening.get();
            final boolean same = !now.plan().ownNumbers();
            return new Opened(Optional.of(now), same && desk.answering(now), "");
        } catch (final EveningProblem e) {
            return new Opened(Optional.empty(), false, e.text());
        }
    }

    private void take(final Opened opened) {
        said.set(opened.trouble());
        held = opened.held();
        sheet.set(opened.sheet());
    }
}
