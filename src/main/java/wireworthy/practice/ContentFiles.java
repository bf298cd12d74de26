package wireworthy.practice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Reads the content files of a folder, in the order of their names. The built-in folders travel
 * inside the program, so that it can be started from anywhere.
 */
public final class ContentFiles {
    private static final long MOST_BYTES = 2 * 1024 * 1024;
    private static final int MOST_FILES = 500;
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private ContentFiles() {}

    /**
     * The files of a folder that came with the program.
     *
     * @param folder {@code problem-banks} or {@code lessons}
     * @param ending such as {@code .json}
     */
    public static List<ContentFile> builtIn(final String folder, final String ending) {
        final List<ContentFile> found = new ArrayList<>();
        try {
            for (final URL place : places(folder)) {
                found.addAll(at(place, ending));
            }
        } catch (final IOException | URISyntaxException e) {
            found.clear();
        }
        return found.isEmpty() ? List.of(missing(folder)) : List.copyOf(found);
    }

    /** All of them: a package of the same name may lie on the class path before the content. */
    private static List<URL> places(final String folder) throws IOException {
        final ClassLoader loader = Objects.requireNonNull(ContentFiles.class.getClassLoader());
        return Collections.list(loader.getResources("wireworthy/" + folder));
    }

    private static List<ContentFile> at(final URL place, final String ending)
            throws IOException, URISyntaxException {
        return place.openConnection() instanceof JarURLConnection jar
                ? inJar(jar, ending)
                : in(Path.of(place.toURI()), ending);
    }

    private static List<ContentFile> inJar(final JarURLConnection jar, final String ending)
            throws IOException, URISyntaxException {
        final Path file = Path.of(jar.getJarFileURL().toURI());
        try (FileSystem inside = FileSystems.newFileSystem(file)) {
            return in(inside.getPath(jar.getEntryName()), ending);
        }
    }

    /** The files of a folder on disk; files with another ending are passed over. */
    public static List<ContentFile> in(final Path folder, final String ending) {
        try (Stream<Path> files = Files.list(folder)) {
            final List<Path> wanted =
                    files.filter(file -> name(file).endsWith(ending))
                            .sorted((a, b) -> name(a).compareTo(name(b)))
                            .limit(MOST_FILES + 1L)
                            .toList();
            return read(wanted, folder);
        } catch (final IOException | UncheckedIOException e) {
            return List.of(missing(folder.toString()));
        }
    }

    private static List<ContentFile> read(final List<Path> wanted, final Path folder) {
        final List<ContentFile> found = new ArrayList<>();
        wanted.stream().limit(MOST_FILES).map(ContentFiles::read).forEach(found::add);
        if (wanted.size() > MOST_FILES) {
            found.add(
                    new ContentFile.Unread(
                            folder.toString(),
                            "more than " + MOST_FILES + " files in this folder",
                            "Only the first " + MOST_FILES + " were read; take some out"));
        }
        return found;
    }

    private static ContentFile read(final Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                return new ContentFile.Unread(
                        name(file),
                        "the file is larger than " + MOST_BYTES / 1024 / 1024 + " MB",
                        "Split it into several files");
            }
            final String text = Files.readString(file);
            return new ContentFile.Text(
                    name(file), text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (final CharacterCodingException e) {
            return new ContentFile.Unread(
                    name(file), "the file is not UTF-8 text", "Save it as UTF-8 text");
        } catch (final IOException e) {
            return new ContentFile.Unread(
                    name(file), "the file can't be read", "Check that it may be read");
        }
    }

    private static ContentFile missing(final String folder) {
        return new ContentFile.Unread(
                folder, "the folder can't be read", "Check that it is there and may be read");
    }

    private static String name(final Path file) {
        return String.valueOf(file.getFileName());
    }
}
