package wireworthy.lessons;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import wireworthy.practice.ContentFile;
import wireworthy.practice.ContentFiles;
import wireworthy.texts.Language;
import wireworthy.texts.Phrases;
import wireworthy.working.Solver;

/**
 * The lessons there are. Only their front matter is read at first; a lesson is read when it is
 * opened, and kept. Safe from several threads.
 */
public final class Lessons {
    private static final String FOLDER = "lessons";
    private static final String ENDING = ".md";
    private static final Phrases TITLES = new Phrases("titles");

    private record Found(
            LessonHeading heading, Supplier<LessonText> text, List<LessonProblem> problems) {}

    private final Solver solver;
    private final Map<String, Found> byId = new LinkedHashMap<>();
    private final Map<String, Lesson> read = new ConcurrentHashMap<>();
    private final Map<String, Lesson> openings = new ConcurrentHashMap<>();
    private final List<LessonProblem> unread = new ArrayList<>();
    private final Set<String> foreign = new HashSet<>();

    private Lessons(final Solver solver) {
        this.solver = solver;
    }

    /**
     * The lessons that come with the program, then those of one's own folder, each by file name.
     *
     * @param solver works the worked examples, and keeps their plans
     * @param ownFolder a folder of further lessons; one that can't be read is a problem
     */
    public static Lessons read(final Solver solver, final Optional<Path> ownFolder) {
        final Lessons lessons = new Lessons(solver);
        lessons.addBuiltIn(Headings.builtIn());
        ownFolder.ifPresent(folder -> ContentFiles.in(folder, ENDING).forEach(lessons::add));
        final List<ContentFile> spoken = new ArrayList<>(ContentFiles.spoken(FOLDER, ENDING));
        ownFolder.ifPresent(folder -> spoken.addAll(ContentFiles.spoken(folder, ENDING)));
        lessons.speak(spoken);
        return lessons;
    }

    static Lessons of(final Solver solver, final List<ContentFile> files) {
        final Lessons lessons = new Lessons(solver);
        files.forEach(lessons::add);
        return lessons;
    }

    /** Of a lesson whose heading was written down the file is read when the lesson is opened. */
    private void addBuiltIn(final List<LessonHeading> headings) {
        for (final LessonHeading heading : headings) {
            byId.put(heading.id(), new Found(heading, () -> builtIn(heading.file()), List.of()));
        }
        if (headings.isEmpty()) {
            ContentFiles.builtIn(FOLDER, ENDING).forEach(this::add);
        }
    }

    private static LessonText builtIn(final String file) {
        return LessonText.of(file, ContentFiles.builtInText(FOLDER, file));
    }

    /** Lays the lessons in the language in use over those in English. */
    private void speak(final List<ContentFile> files) {
        if (Language.inUse().ofSources()) {
            return;
        }
        foreign.addAll(byId.keySet());
        final Map<String, Found> english = new LinkedHashMap<>(byId);
        byId.clear();
        files.forEach(this::add);
        foreign.removeAll(byId.keySet());
        final Map<String, Found> spoken = new LinkedHashMap<>(byId);
        byId.clear();
        english.forEach((id, found) -> byId.put(id, spoken.getOrDefault(id, titled(found))));
    }

    /** A lesson that is still in English has at least its title in the language in use. */
    private static Found titled(final Found found) {
        final String title = TITLES.of(found.heading().title());
        return new Found(found.heading().titled(title), found.text(), found.problems());
    }

    /** Whether there is no text of this lesson in the language in use: it is shown in English. */
    public boolean foreign(final String id) {
        return foreign.contains(id);
    }

    private void add(final ContentFile file) {
        if (file instanceof ContentFile.Text text) {
            add(text);
        }
        if (file instanceof ContentFile.Unread bad) {
            unread.add(new LessonProblem(bad.name(), 1, bad.message(), bad.remedy() + "."));
        }
    }

    private void add(final ContentFile.Text file) {
        try {
            final LessonText text = LessonText.of(file.name(), file.text());
            final List<LessonProblem> problems = new ArrayList<>();
            final LessonHeading heading = FrontMatter.read(text, problems);
            add(new Found(heading, () -> text, List.copyOf(problems)));
        } catch (final Refused e) {
            unread.add(e.in(file.name()));
        }
    }

    private void add(final Found found) {
        final LessonHeading heading = found.heading();
        final Found first = byId.putIfAbsent(heading.id(), found);
        if (first != null) {
            unread.add(
                    new LessonProblem(
                            heading.file(),
                            1,
                            "The id %s belongs to %s"
                                    .formatted(heading.id(), first.heading().file()),
                            "Give this lesson an id of its own."));
        }
    }

    /** What the contents show, in reading order. */
    public List<LessonHeading> contents() {
        return byId.values().stream().map(Found::heading).toList();
    }

    /** The lesson of this id, read at the first call. */
    public Optional<Lesson> lesson(final String id) {
        return Optional.ofNullable(byId.get(id))
                .map(found -> read.computeIfAbsent(id, known -> open(found)));
    }

    /** The lesson of this id with its first screen only, read at the first call. */
    public Optional<Lesson> opening(final String id) {
        return Optional.ofNullable(byId.get(id))
                .map(found -> openings.computeIfAbsent(id, known -> first(found)));
    }

    private Lesson first(final Found found) {
        return LessonReader.opening(
                found.heading(), found.problems(), found.text().get(), byId::containsKey, solver);
    }

    private Lesson open(final Found found) {
        return LessonReader.read(
                found.heading(), found.problems(), found.text().get(), byId::containsKey, solver);
    }

    /** The name of the file of a lesson; empty where there is none. */
    public String file(final String id) {
        return Optional.ofNullable(byId.get(id)).map(found -> found.heading().file()).orElse("");
    }

    /** The files that are no lesson. */
    public List<LessonProblem> unread() {
        return List.copyOf(unread);
    }

    /** What is wrong in any file. Reads every lesson. */
    public List<LessonProblem> problems() {
        return Stream.concat(
                        unread.stream(),
                        byId.keySet().stream()
                                .flatMap(id -> lesson(id).stream())
                                .map(Lesson::problems)
                                .flatMap(Collection::stream))
                .toList();
    }
}
