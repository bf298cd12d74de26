package wireworthy.evening.course;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
     * Reads them.
     *
     * @param own a leader's own, where there is such a folder
     * @param lessons titles by id, of the lessons an evening may show
     */
    public static Evenings read(final Path own, final Map<String, String> lessons) {
        final List<ContentFile> files = new ArrayList<>(ContentFiles.builtIn(FOLDER, ENDING));
        if (Files.isDirectory(own)) {
            files.addAll(ContentFiles.in(own, ENDING));
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

    private static Evening read(final ContentFile file, final Map<String, String> lessons) {
        if (file instanceof ContentFile.Text text) {
            return EveningReader.read(text, lessons);
        }
        final ContentFile.Unread unread = (ContentFile.Unread) file;
        throw new EveningProblem(unread.name() + ": " + unread.message(), unread.remedy());
    }
}
