package wireworthy.command;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.File;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Works the questions of a file or of standard input; the replies go to standard output. */
final class Work {
    private static final int SOME_NOT_WORKED = 2;
    private static final String INPUT = "-";

    private Work() {}

    /**
     * Whether the arguments are no more than {@code work} and a file that is there: they need no
     * parser, which takes longer to load than hundreds of questions take to work.
     */
    static boolean plainly(final String[] arguments) {
        return arguments.length == 2 && arguments[0].equals("work") && plainFile(arguments[1]);
    }

    /** What begins with a dash is an option, with an at sign a file of arguments. */
    private static boolean plainFile(final String file) {
        final boolean special = file.startsWith("-") || file.startsWith("@");
        return file.equals(INPUT) || (!special && isThere(file));
    }

    /** Whether questions can be read from there. */
    static boolean isThere(final String file) {
        return file.equals(INPUT) || new File(file).isFile();
    }

    /**
     * Works every question.
     *
     * @param file a file, or {@code -} for standard input
     * @return the exit status: 0 when every question was worked, 2 when any was not
     */
    static int file(final String file) throws IOException {
        try (BufferedReader questions =
                new BufferedReader(new InputStreamReader(opened(file), StandardCharsets.UTF_8))) {
            final PrintWriter replies = replies();
            final boolean all = new WorkFile().work(questions, replies);
            replies.flush();
            return all ? 0 : SOME_NOT_WORKED;
        }
    }

    private static InputStream opened(final String file) throws IOException {
        return file.equals(INPUT) ? System.in : Files.newInputStream(Path.of(file));
    }

    private static PrintWriter replies() {
        return new PrintWriter(
                new BufferedWriter(
                        new OutputStreamWriter(
                                new FileOutputStream(FileDescriptor.out), StandardCharsets.UTF_8)));
    }
}
