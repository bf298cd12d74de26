package wireworthy.lessons;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/** Finds the lesson files that come with the program, and those of a folder of one's own. */
final class LessonFiles {
    private static final int MOST = 200;

    private LessonFiles() {}

    /** Takes a file's name and its bytes; no more bytes than show that it is too large. */
    interface Reader extends BiConsumer<String, byte[]> {}

    /** Reads the lessons beside this class, in a folder or in a jar, by name. */
    static void builtIn(final Reader reader) {
        final URL place =
                Objects.requireNonNull(LessonFiles.class.getResource("LessonFiles.class"));
        try {
            if (place.openConnection() instanceof JarURLConnection jar) {
                inJar(Path.of(jar.getJarFileURL().toURI()), jar.getEntryName(), reader);
            } else {
                in(beside(Path.of(place.toURI())), reader);
            }
        } catch (final IOException e) {
            throw new UncheckedIOException("Cannot read the lessons of the program", e);
        } catch (final URISyntaxException e) {
            throw new IllegalStateException("The program lies at no readable place: " + place, e);
        }
    }

    private static Path beside(final Path path) {
        return Objects.requireNonNull(path.getParent());
    }

    private static void inJar(final Path jar, final String entry, final Reader reader)
            throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(jar)) {
            in(beside(zip.getPath(entry)), reader);
        }
    }

    /**
     * Reads the lessons of a folder, by name; the first 200.
     *
     * @throws IOException if the folder or a file can't be read
     */
    static void in(final Path folder, final Reader reader) throws IOException {
        for (final Path lesson : names(folder)) {
            try (InputStream in = Files.newInputStream(lesson)) {
                final byte[] bytes = in.readNBytes(LessonText.LARGEST + 1);
                reader.accept(String.valueOf(lesson.getFileName()), bytes);
            }
        }
    }

    private static List<Path> names(final Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.filter(path -> path.toString().endsWith(".md"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .limit(MOST)
                    .toList();
        }
    }
}
