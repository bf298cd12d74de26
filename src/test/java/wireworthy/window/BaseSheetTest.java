package wireworthy.window;

import static java.lang.reflect.Modifier.isAbstract;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Control;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Toggle;
import org.junit.jupiter.api.Test;

/** The base sheet is cut down to the controls there are; every one of them has to be kept. */
class BaseSheetTest {
    private static final Pattern IMPORT =
            Pattern.compile("import (javafx\\.scene\\.control\\.(\\w+));");
    private static final Pattern NEXT_WORD = Pattern.compile("(?<=[a-z])(?=[A-Z])");

    @Test
    void everyControlInUseKeepsItsBaseStyle() throws IOException {
        final List<String> kept = Files.readAllLines(Path.of("src/build/controls.txt"));
        final Set<String> used = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/wireworthy/window"))) {
            for (final Path file : files.filter(Files::isRegularFile).toList()) {
                IMPORT.matcher(Files.readString(file))
                        .results()
                        .filter(BaseSheetTest::isControl)
                        .map(it -> styleClass(it.group(2)))
                        .forEach(used::add);
            }
        }
        assertThat(used).contains("label", "button", "slider");
        assertThat(kept).containsAll(used);
    }

    private static boolean isControl(final MatchResult imported) {
        try {
            final ClassLoader here = BaseSheetTest.class.getClassLoader();
            final Class<?> named = Class.forName(imported.group(1), false, here);
            return (Control.class.isAssignableFrom(named) || isMarked(named))
                    && !isAbstract(named.getModifiers());
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    /** An item of a menu that shows whether it is chosen. */
    private static boolean isMarked(final Class<?> named) {
        final boolean oneOfSome =
                MenuItem.class.isAssignableFrom(named) && Toggle.class.isAssignableFrom(named);
        return oneOfSome || CheckMenuItem.class.isAssignableFrom(named);
    }

    /** Controls have their own names as style classes: {@code ToggleButton}, toggle-button. */
    private static String styleClass(final String control) {
        return NEXT_WORD.matcher(control).replaceAll("-").toLowerCase(Locale.ROOT);
    }
}
