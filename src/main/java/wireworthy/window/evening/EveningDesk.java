package wireworthy.window.evening;

import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.course.Evenings;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.record.DataFolder;
import wireworthy.window.FileAsking;

/** What the parts of the evening class need of the program. */
public final class EveningDesk {
    private final DataFolder folder;
    private final Clock clock;
    private final FileAsking files;
    private final Supplier<Lessons> lessons;
    private final Consumer<String> lesson;
    private final Set<Integer> led = ConcurrentHashMap.newKeySet();
    private Optional<Shelf> shelf = Optional.empty();

    /**
     * @param lessons those an evening may show; may take a while
     * @param lesson opens the lesson of an id
     */
    public EveningDesk(
            final DataFolder folder,
            final Clock clock,
            final FileAsking files,
            final Supplier<Lessons> lessons,
            final Consumer<String> lesson) {
        this.folder = folder;
        this.clock = clock;
        this.files = files;
        this.lessons = lessons;
        this.lesson = lesson;
    }

    /** Where this machine keeps what belongs to it. */
    DataFolder folder() {
        return folder;
    }

    /** What is being answered on this machine. */
    BegunSheets begun() {
        return new BegunSheets(folder.sheets().resolve("begun"));
    }

    /**
     * Whether a problem of a sheet is being answered here, and nobody said that it is for the
     * leader to see. One with the same numbers counts as the same, on whichever sheet and for
     * however many it is: its key would tell. Not on the window's thread.
     */
    boolean answering(final Sheet sheet) {
        return !led.contains(sheet.plan().seed())
                && begun().unfinished().stream().anyMatch(mark -> shared(mark, sheet));
    }

    /** A sheet of other banks can't be answered any more. */
    private boolean shared(final String mark, final Sheet sheet) {
        try {
            return Sheet.marked(mark, shelf()).shares(sheet);
        } catch (final EveningProblem e) {
            return false;
        }
    }

    /** Whoever asks for a sheet leads the class. */
    void lead(final Sheet sheet) {
        led.add(sheet.plan().seed());
    }

    Clock clock() {
        return clock;
    }

    /** Asks for files and folders. */
    FileAsking files() {
        return files;
    }

    /** Opens a lesson. */
    void toLesson(final String id) {
        lesson.accept(id);
    }

    /** The lessons: not on the window's thread. */
    Lessons lessons() {
        return lessons.get();
    }

    /** The evenings to start from: not on the window's thread. */
    Evenings evenings() {
        return Evenings.read(
                folder.evenings(),
                lessons.get().contents().stream()
                        .collect(
                                Collectors.toMap(
                                        LessonHeading::id, LessonHeading::title, (a, b) -> a)));
    }

    /** The banks sheets are made from, read when first asked for: not on the window's thread. */
    synchronized Shelf shelf() {
        final Shelf read = shelf.orElseGet(() -> Shelf.with(folder.problemBanks()));
        shelf = Optional.of(read);
        return read;
    }
}
