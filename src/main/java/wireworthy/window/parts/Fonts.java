package wireworthy.window.parts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import javafx.scene.text.Font;

/** The bundled type. Each face is loaded once, on the window's thread, when it is first needed. */
public final class Fonts {
    private static final double ANY_SIZE = 17;
    private static final Set<String> LOADED = new HashSet<>();

    private Fonts() {}

    /** What every page needs. */
    public static void loadUsual() {
        load("Regular");
        load("Bold");
    }

    /**
     * For what is stressed; comes before such a text is shown, or it would be slanted otherwise.
     */
    static void loadItalic() {
        load("Italic");
    }

    private static void load(final String face) {
        if (LOADED.add(face)) {
            final String name = "/wireworthy/fonts/Andika-" + face + ".ttf";
            try (InputStream file = Fonts.class.getResourceAsStream(name)) {
                Font.loadFont(Objects.requireNonNull(file, name), ANY_SIZE);
            } catch (final IOException e) {
                throw new UncheckedIOException("The bundled font " + name + " cannot be read", e);
            }
        }
    }
}
