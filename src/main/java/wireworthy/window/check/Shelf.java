package wireworthy.window.check;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.record.WholeFile;

/** Where vehicles are kept, and which were open lately. */
final class Shelf {
    private static final int MOST_RECENT = 8;
    private static final int LONGEST_NAME = 40;
    private static final long MOST_BYTES = 64 * 1024;

    private final Path folder;
    private final Path list;

    /**
     * @param folder where new vehicles are put; made when the first one is
     */
    Shelf(final Path folder) {
        this.folder = folder;
        this.list = folder.resolve("recent.txt");
    }

    Path folder() {
        return folder;
    }

    /** A file of its own for a vehicle of this name. */
    Path fresh(final String name) {
        return IntStream.iterate(1, i -> i + 1)
                .mapToObj(i -> named(name, (i == 1 ? "" : "-" + i) + ".json"))
                .filter(it -> !Files.exists(it))
                .findFirst()
                .orElseThrow();
    }

    /**
     * The first of some names after which no file here is called.
     *
     * @param names by number, from 1 on
     */
    String free(final IntFunction<String> names) {
        return IntStream.iterate(1, i -> i + 1)
                .mapToObj(names)
                .filter(it -> !Files.exists(named(it, ".json")))
                .findFirst()
                .orElseThrow();
    }

    /** Whether a file is one that {@link #fresh} gives for this name. */
    boolean isNamed(final Path file, final String name) {
        final String known =
                String.valueOf(file.getFileName()).replaceAll("(-[0-9]+)?\\.json$", "");
        final String wanted = String.valueOf(named(name, "").getFileName());
        return known.equals(wanted) || String.valueOf(file.getFileName()).equals(wanted + ".json");
    }

    /** A file named after a vehicle, whether it is there or not. */
    Path named(final String name, final String ending) {
        final String plain =
                name.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N}]+", "-")
                        .replaceAll("^-|-$", "");
        final String stem = plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
        return folder.resolve((stem.isEmpty() ? "vehicle" : stem) + ending);
    }

    /** The files open lately that are still there, the latest first. */
    List<Path> recent() {
        return lines().flatMap(Shelf::path).filter(Files::isRegularFile).toList();
    }

    private Stream<String> lines() {
        try {
            return Files.exists(list) && Files.size(list) <= MOST_BYTES
                    ? Files.readString(list).lines()
                    : Stream.empty();
        } catch (final IOException e) {
            // What was open lately is a help, not data: without it one still opens by hand.
            return Stream.empty();
        }
    }

    private static Stream<Path> path(final String line) {
        try {
            return Stream.of(Path.of(line));
        } catch (final InvalidPathException e) {
            return Stream.empty();
        }
    }

    /** A file as it is listed. */
    static Path whole(final Path file) {
        return file.toAbsolutePath().normalize();
    }

    /** Remembers that a file is open. */
    void opened(final Path file) {
        final Path whole = whole(file);
        final List<Path> all = new ArrayList<>(recent());
        all.remove(whole);
        all.add(0, whole);
        final String text =
                String.join("\n", all.stream().limit(MOST_RECENT).map(Path::toString).toList());
        try {
            WholeFile.write(list, text.getBytes(StandardCharsets.UTF_8));
        } catch (final IOException e) {
            // As above; whether the vehicle itself can be kept is said by its saver.
            return;
        }
    }
}
