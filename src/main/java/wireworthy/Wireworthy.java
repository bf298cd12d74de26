package wireworthy;

import java.io.File;
import java.nio.file.Path;
import wireworthy.command.WireworthyCommand;
import wireworthy.record.DataFolder;
import wireworthy.window.WireworthyApp;

/**
 * Starts the program: the window when no arguments are given, else the command line. It does not
 * extend {@code Application}, so that the program also starts from a plain jar, and names each side
 * in a method of its own, so that neither is loaded for the other.
 */
public final class Wireworthy {
    private Wireworthy() {}

    public static void main(final String[] arguments) {
        if (arguments.length == 0) {
            openWindow(DataFolder.standard());
        } else if (namesFolder(arguments)) {
            openWindow(new DataFolder(Path.of(arguments[1])));
        } else {
            System.exit(WireworthyCommand.run(arguments, Wireworthy::openWindow));
        }
    }

    /** So plain that the window need not wait until the command line has been loaded. */
    private static boolean namesFolder(final String... arguments) {
        return arguments.length == 2
                && arguments[0].equals("--data-dir")
                && new File(arguments[1]).isAbsolute()
                && new File(arguments[1]).isDirectory();
    }

    private static void openWindow(final DataFolder folder) {
        try {
            WireworthyApp.open(folder);
        } catch (UnsupportedOperationException noScreen) {
            System.err.println(
                    "The window cannot open: no screen was found here."
                            + " With --help you see what works without one.");
            System.exit(1);
        }
    }
}
