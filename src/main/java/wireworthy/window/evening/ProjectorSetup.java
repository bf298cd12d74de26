package wireworthy.window.evening;

import java.nio.file.Path;
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
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.SheetFile;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** What is to be thrown on the wall: the problems of a sheet, or some drawn on a skill. */
final class ProjectorSetup {
    private final Supplier<Shelf> shelf;
    private final IntSupplier seeds;
    private final Background background;
    private final ReadOnlyObjectWrapper<Optional<Sheet>> sheet =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    private record Opened(Optional<Sheet> sheet, String trouble) {}

    /**
     * @param shelf read away from the window
     * @param seeds below {@value SheetPlan#SEEDS}, another each time
     */
    ProjectorSetup(
            final Supplier<Shelf> shelf, final IntSupplier seeds, final Background background) {
        this.shelf = shelf;
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

    /** Opens the sheet of a mark. */
    void mark(final String typed) {
        open(() -> Sheet.marked(typed, shelf.get()));
    }

    /** Opens a sheet from the file that goes to the laptops. */
    void file(final Path file) {
        open(() -> Sheet.marked(SheetFile.read(file).mark(), shelf.get()));
    }

    /** Problems on a skill, with numbers that stand on no sheet. */
    void skill(final Skill skill) {
        final Pick pick = Pick.BySkills.of(Set.of(skill), Pick.MOST_PROBLEMS);
        final SheetPlan plan = new SheetPlan(pick, false, 1, true, seeds.getAsInt());
        open(() -> Sheet.of(plan, shelf.get()));
    }

    private void open(final Supplier<Sheet> opening) {
        background.run(() -> opened(opening), this::take);
    }

    private static Opened opened(final Supplier<Sheet> opening) {
        try {
            return new Opened(Optional.of(opening.get()), "");
        } catch (final EveningProblem e) {
            return new Opened(Optional.empty(), e.text());
        }
    }

    private void take(final Opened opened) {
        said.set(opened.trouble());
        sheet.set(opened.sheet());
    }
}
