package wireworthy.evening.course;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wireworthy.evening.EveningProblem;
import wireworthy.practice.ContentFile;
import wireworthy.practice.ContentFiles;

/**
 * The evenings to start from: those that came with the program, then a leader's own.
 *
 * @param troubles what can't be read, with file, line and remedy
 */
public record Evenings(List<Evening> evenings, List<String> troubles) {
    private static final String FOLDER = "evenings";
    private static final String ENDING = ".md";
    private static final String ABOUT = "README.md";

    public Evenings {
        evenings = List.copyOf(evenings);
        troubles = List.copyOf(troubles);
    }

    /**
     * Reads them, in the language in use where there is such a file.
     *
     * @param own a leader's own, where there is such a folder
     * @param lessons titles by id, of the lessons an evening may show
     */
    public static Evenings read(final Path own, final Map<String, String> lessons) {
        final List<ContentFile> files =
                spoken(ContentFiles.builtIn(FOLDER, ENDING), ContentFiles.spoken(FOLDER, ENDING));
        if (Files.isDirectory(own)) {
            files.addAll(spoken(ContentFiles.in(own, ENDING), ContentFiles.spoken(own, ENDING)));
        }
        final List<Evening> read = new ArrayList<>();
        final List<String> troubles = new ArrayList<>();
        for (final ContentFile file : files) {
            try {
                if (!file.name().equals(ABOUT)) {
                    read.add(read(file, lessons));
                }
            } catch (final EveningProblem e) {
                troubles.add(e.text());
            }
        }
        return new Evenings(read, troubles);
    }

    /** Each file, or the one of its name in the language in use. */
    private static List<ContentFile> spoken(
            final List<ContentFile> files, final List<ContentFile> others) {
        final Map<String, ContentFile> byName = new LinkedHashMap<>();
        files.forEach(file -> byName.put(file.name(), file));
        others.forEach(file -> byName.replace(file.name(), file));
        return new ArrayList<>(byName.values());
    }

    private static Evening read(final ContentFile file, final Map<String, String> lessons) {
        if (file instanceof ContentFile.Text text) {
            return EveningReader.read(text, lessons);
        }
        final ContentFile.Unread unread = (ContentFile.Unread) file;
        throw new EveningProblem(unread.name() + ": " + unread.message(), unread.remedy());
    }
}
