package wireworthy.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes files whole or not at all, however the program or the computer stops. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes to a file beside the old one, waits until it is on the disk, and then puts it in its
     * place. One at a time: two that wrote the same file at once would share the one beside it.
     *
     * @throws IOException where that can't be done; the old file is left as it was
     */
    public static synchronized void write(final Path file, final byte[] bytes) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        final Path fresh = file.resolveSibling(file.getFileName() + ".new");
        try (FileChannel channel =
                FileChannel.open(
                        fresh,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.WRITE,
                        StandardOpenOption.TRUNCATE_EXISTING)) {
            final ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
        move(fresh, file);
    }

    /** Puts a file in the place of another. */
    static void move(final Path from, final Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
