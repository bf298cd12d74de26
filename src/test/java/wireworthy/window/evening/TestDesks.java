package wireworthy.window.evening;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import wireworthy.lessons.Lessons;
import wireworthy.record.DataFolder;
import wireworthy.window.FileAsking;
import wireworthy.working.Solver;

/** What the evening class needs, as the tests want it: files are named beforehand. */
public final class TestDesks implements FileAsking {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T19:00:00Z"), ZoneOffset.UTC);

    private static final Lessons LESSONS = Lessons.read(new Solver(), Optional.empty());

    /** The lessons opened. */
    final List<String> lessons = new ArrayList<>();

    private final Path answer;

    private TestDesks(final Path answer) {
        this.answer = answer;
    }

    /**
     * A desk that keeps everything in a folder; every file or folder asked for is the other one.
     */
    public static EveningDesk desk(final Path data, final Path answer) {
        final TestDesks files = new TestDesks(answer);
        return new EveningDesk(
                new DataFolder(data), CLOCK, files, () -> LESSONS, files.lessons::add);
    }

    @Override
    public Optional<Path> open(final Node from, final String title, final String ending) {
        return Optional.of(answer);
    }

    @Override
    public Optional<Path> save(
            final Node from, final String title, final String name, final String ending) {
        return Optional.of(
                Files.isDirectory(answer) ? answer.resolve(name + "." + ending) : answer);
    }

    @Override
    public Optional<Path> folder(final Node from, final String title) {
        return Optional.of(answer);
    }

    @Override
    public Optional<Path> folderToRead(final Node from, final String title) {
        return Optional.of(answer);
    }
}
