package wireworthy.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import wireworthy.record.DataFolder;

/** The root of the command line. Without a subcommand it opens the window. */
@Command(
        name = "wireworthy",
        description = "Teaches, drills and checks the sums behind safe 12, 24 and 48 V wiring.",
        footer = {"", "Without a command the window opens."},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
public final class WireworthyCommand implements Callable<Integer> {
    @Option(
            names = "--data-dir",
            paramLabel = "FOLDER",
            scope = ScopeType.INHERIT,
            description = "Keep settings, record and log in this folder.")
    private @Nullable Path dataDir;

    private final Consumer<DataFolder> window;

    private WireworthyCommand(final Consumer<DataFolder> window) {
        this.window = window;
    }

    /**
     * Runs the command line and returns its exit status: 0 done, 1 failed, 2 not understood.
     *
     * @param window opens the window and returns when it is closed
     */
    public static int run(final String[] arguments, final Consumer<DataFolder> window) {
        return Work.plainly(arguments)
                ? workPlainly(arguments[1])
                : line(window).execute(arguments);
    }

    private static int workPlainly(final String file) {
        try {
            return Work.file(file);
        } catch (final IOException | RuntimeException failure) {
            System.err.println(plainly(failure));
            return CommandLine.ExitCode.SOFTWARE;
        }
    }

    /** The command line with all its subcommands, writing to the standard streams. */
    static CommandLine line(final Consumer<DataFolder> window) {
        return new CommandLine(new WireworthyCommand(window))
                .addSubcommand(new WorkCommand())
                .addSubcommand(new ProofCommand())
                .addSubcommand(new SheetCommand())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(WireworthyCommand::sayPlainly);
    }

    /** The folder named by {@code --data-dir}, else the usual one of this system. */
    DataFolder dataFolder() {
        return dataDir == null ? DataFolder.standard() : new DataFolder(dataDir);
    }

    @Override
    public Integer call() {
        window.accept(dataFolder());
        return CommandLine.ExitCode.OK;
    }

    private static int sayPlainly(
            final Exception failure, final CommandLine line, final CommandLine.ParseResult parsed) {
        line.getErr().println(plainly(failure));
        return line.getCommandSpec().exitCodeOnExecutionException();
    }

    private static String plainly(final Exception failure) {
        final String message = failure.getMessage();
        return message == null ? failure.toString() : message;
    }
}
