package wireworthy.command;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works a file of questions. */
@Command(
        name = "work",
        mixinStandardHelpOptions = true,
        description = {
            "Work questions, one JSON object a line; a reply a line, in order.",
            "Exit status 0 when every question was worked, 2 when any was not."
        })
final class WorkCommand implements Callable<Integer> {
    private static final int SOME_NOT_WORKED = 2;

    @Parameters(paramLabel = "FILE", description = "The questions; - for standard input.")
    private String file = "-";

    @Spec private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        try (BufferedReader questions = questions()) {
            final PrintWriter replies = replies();
            final boolean all = new WorkFile().work(questions, replies);
            replies.flush();
            return all ? 0 : SOME_NOT_WORKED;
        }
    }

    private BufferedReader questions() throws IOException {
        if (file.equals("-")) {
            return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        }
        final Path path = Path.of(file);
        if (!Files.isRegularFile(path)) {
            throw new ParameterException(
                    spec.commandLine(), "There is no file " + file + " to read.");
        }
        return new BufferedReader(
                new InputStreamReader(Files.newInputStream(path), StandardCharsets.UTF_8));
    }

    private static PrintWriter replies() {
        return new PrintWriter(
                new BufferedWriter(
                        new OutputStreamWriter(
                                new FileOutputStream(FileDescriptor.out), StandardCharsets.UTF_8)));
    }
}
