package wireworthy.window;

import java.util.concurrent.CompletableFuture;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.record.DataFolder;
import wireworthy.record.SettingsFile;
import wireworthy.working.Solver;

/** What is read while the toolkit still starts, so that the first place opens with its content. */
final class Ahead {
    private final CompletableFuture<Solver> solver;
    private final CompletableFuture<Lessons> lessons;

    private Ahead(final DataFolder folder) {
        solver = CompletableFuture.supplyAsync(Solver::new);
        lessons = solver.thenApplyAsync(it -> read(it, folder));
    }

    /** Begins at once, on threads of its own: the toolkit waits for nothing that is read here. */
    static Ahead begin(final DataFolder folder) {
        return new Ahead(folder);
    }

    private static Lessons read(final Solver solver, final DataFolder folder) {
        final Lessons all = Lessons.read(solver, Content.own(folder.lessons()));
        final String last = new SettingsFile(folder.settings()).read().leftOff().lesson();
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
