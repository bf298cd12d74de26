package wireworthy.command;

import java.io.IOException;
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
    @Parameters(paramLabel = "FILE", description = "The questions; - for standard input.")
    private String file = "-";

    @Spec private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        if (!Work.isThere(file)) {
            throw new ParameterException(
                    spec.commandLine(), "There is no file " + file + " to read.");
        }
        return Work.file(file);
    }
}
