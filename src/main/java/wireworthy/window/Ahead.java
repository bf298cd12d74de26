package wireworthy.window;

import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.record.DataFolder;
import wireworthy.record.Settings;
import wireworthy.record.SettingsFile;
import wireworthy.texts.Language;
import wireworthy.working.Solver;

/** What is read while the toolkit still starts, so that the first place opens with its content. */
final class Ahead {
    private final CompletableFuture<Solver> solver;
    private final CompletableFuture<Lessons> lessons;

    private Ahead(final DataFolder folder, final Consumer<Settings> settled) {
        solver = CompletableFuture.supplyAsync(Solver::new);
        lessons = solver.thenApplyAsync(it -> read(it, folder, settled));
    }

    /** Begins at once, on threads of its own: the toolkit waits for nothing that is read here. */
    static Ahead begin(final DataFolder folder) {
        return new Ahead(folder, it -> Language.use(Language.of(it.language())));
    }

    /** The same once more, in the language in use: its setting may not be on disk yet. */
    static Ahead again(final DataFolder folder) {
        return new Ahead(folder, it -> {});
    }

    private static Lessons read(
            final Solver solver, final DataFolder folder, final Consumer<Settings> settled) {
        final Settings settings = new SettingsFile(folder.settings()).read();
        settled.accept(settings);
        final String last = settings.leftOff().lesson();
        final Lessons all = Lessons.read(solver, Content.own(folder.lessons()));
        all.contents().stream()
                .map(LessonHeading::id)
                .filter(id -> last.isEmpty() || id.equals(last))
                .findFirst()
                .ifPresent(all::opening);
        return all;
    }

    Solver solver() {
        return solver.join();
    }

    /** The lessons, once they have been read. */
    Lessons lessons() {
        return lessons.join();
    }
}
