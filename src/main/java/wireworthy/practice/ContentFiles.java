package wireworthy.practice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import wireworthy.texts.Language;

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

    /**
     * The text of one file that came with the program.
     *
     * @throws UncheckedIOException if it can't be read
     */
    public static String builtInText(final String folder, final String name) {
        try (InputStream file =
                ContentFiles.class.getResourceAsStream("/wireworthy/" + folder + "/" + name)) {
            return text(Objects.requireNonNull(file, name).readAllBytes());
        } catch (final IOException e) {
            throw new UncheckedIOException(name + " cannot be read", e);
        }
    }

    /** The files in the language in use that stand beside those of a built-in folder. */
    public static List<ContentFile> spoken(final String folder, final String ending) {
        final Language language = Language.inUse();
        return language.ofSources()
                ? List.of()
                : builtIn(folder + "/" + language.code(), ending).stream()
                        .filter(ContentFile.Text.class::isInstance)
                        .toList();
    }

    /** The files in the language in use that stand beside those of a folder on disk. */
    public static List<ContentFile> spoken(final Path folder, final String ending) {
        final Language language = Language.inUse();
        final Path beside = folder.resolve(language.code());
        return language.ofSources() || !Files.isDirectory(beside) ? List.of() : in(beside, ending);
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

    /** Read from the jar that is open already: a file system on it would take longer to load. */
    private static List<ContentFile> inJar(final JarURLConnection connection, final String ending)
            throws IOException {
        final JarFile jar = connection.getJarFile();
        final String folder = connection.getEntryName() + "/";
        final List<Source> sources = new ArrayList<>();
        for (final JarEntry entry : Collections.list(jar.entries())) {
            final String name = entry.getName();
            if (name.startsWith(folder)
                    && name.endsWith(ending)
                    && name.indexOf('/', folder.length()) < 0) {
                sources.add(
                        new Source(
                                name.substring(folder.length()),
                                entry::getSize,
                                () -> jar.getInputStream(entry).readAllBytes()));
            }
        }
        return read(sources, folder);
    }

    /** The files of a folder on disk; files with another ending are passed over. */
    public static List<ContentFile> in(final Path folder, final String ending) {
        try (Stream<Path> files = Files.list(folder)) {
            return read(
                    files.filter(file -> name(file).endsWith(ending))
                            .map(file -> Source.of(folder, file))
                            .toList(),
                    folder.toString());
        } catch (final IOException | UncheckedIOException e) {
            return List.of(missing(folder.toString()));
        }
    }

    private static List<ContentFile> read(final List<Source> sources, final String folder) {
        final List<Source> wanted = new ArrayList<>(sources);
        wanted.sort((a, b) -> a.name().compareTo(b.name()));
        final List<ContentFile> found = new ArrayList<>();
        wanted.subList(0, Math.min(MOST_FILES, wanted.size()))
                .forEach(source -> found.add(read(source)));
        if (wanted.size() > MOST_FILES) {
            found.add(
                    new ContentFile.Unread(
                            folder,
                            "more than " + MOST_FILES + " files in this folder",
                            "Only the first " + MOST_FILES + " were read; take some out"));
        }
        return found;
    }

    private static ContentFile read(final Source source) {
        final String name = source.name();
        try {
            if (source.size().get() > MOST_BYTES) {
                return new ContentFile.Unread(
                        name,
                        "the file is larger than " + MOST_BYTES / 1024 / 1024 + " MB",
                        "Split it into several files");
            }
            final String text = text(source.bytes().get());
            return new ContentFile.Text(
                    name, text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (final CharacterCodingException e) {
            return new ContentFile.Unread(
                    name, "the file is not UTF-8 text", "Save it as UTF-8 text");
        } catch (final LeadsOut e) {
            return new ContentFile.Unread(
                    name,
                    "this is no file of the folder, and what it leads to was not read",
                    "Put a copy of the file itself into the folder");
        } catch (final IOException e) {
            return new ContentFile.Unread(
                    name, "the file can't be read", "Check that it may be read");
        }
    }

    private static String text(final byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }

    private static ContentFile missing(final String folder) {
        return new ContentFile.Unread(
                folder, "the folder can't be read", "Check that it is there and may be read");
    }

    private static String name(final Path file) {
        return String.valueOf(file.getFileName());
    }

    /** A file on disk or in a jar, not read yet. */
    private record Source(String name, Reading<Long> size, Reading<byte[]> bytes) {
        static Source of(final Path folder, final Path file) {
            return new Source(
                    ContentFiles.name(file),
                    () -> Files.size(within(folder, file)),
                    () -> Files.readAllBytes(within(folder, file)));
        }

        /** A link may lead anywhere, and a pipe never ends. */
        private static Path within(final Path folder, final Path file) throws IOException {
            final Path real = file.toRealPath();
            if (!Files.isRegularFile(real) || !real.startsWith(folder.toRealPath())) {
                throw new LeadsOut();
            }
            return real;
        }
    }

    private static final class LeadsOut extends IOException {}

    private interface Reading<T> {
        T get() throws IOException;
    }
}
