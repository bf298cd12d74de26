package wireworthy.window;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.scene.Scene;
import wireworthy.record.Settings;
import wireworthy.window.parts.Fonts;

/** Dresses a scene: base style, our sheets, the colours of a theme, the size of its text. */
public final class Looks {
    /** Size of running text at 100 %, in pixels; all other sizes are in em. */
    public static final double TEXT_PIXELS = 17;

    /** The build puts a cut of it, for the controls there are, before the one of the library. */
    private static final String BASE = "/atlantafx/base/theme/primer-light.css";

    static final List<String> SHEETS =
            List.of(
                    "base.css",
                    "controls.css",
                    "strip.css",
                    "parts.css",
                    "reading.css",
                    "figures.css",
                    "overlay.css",
                    "working.css",
                    "practice.css",
                    "sums.css",
                    "check.css",
                    "stand.css",
                    "evening.css",
                    "projector.css",
                    "afterwards.css");

    /** The usual size as a sheet: a style of one node would need the parser of style sheets. */
    private static final String USUAL_SIZE = "usual-size.css";

    private static boolean ready;

    private Looks() {}

    /**
     * Loads the base style and the fonts, once. Comes before any control is made, because for the
     * first one the toolkit would load a base style of its own.
     */
    static void prepare() {
        if (!ready) {
            ready = true;
            Application.setUserAgentStylesheet(BASE);
            Fonts.loadUsual();
        }
    }

    /** Dresses the scene; may be called again with another theme or size. */
    public static void dress(final Scene scene, final Theme theme, final int textPerCent) {
        prepare();
        final boolean usual = textPerCent == Settings.SMALLEST_TEXT;
        final Stream<String> own =
                usual ? Stream.of(theme.sheet(), USUAL_SIZE) : Stream.of(theme.sheet());
        final List<String> sheets = Stream.concat(SHEETS.stream(), own).map(Looks::sheet).toList();
        // Setting the same sheets again would have them all read again.
        if (!scene.getStylesheets().equals(sheets)) {
            scene.getStylesheets().setAll(sheets);
        }
        final double pixels = TEXT_PIXELS * textPerCent / 100;
        scene.getRoot().setStyle(usual ? "" : "-fx-font-size: " + pixels + "px;");
    }

    private static String sheet(final String name) {
        return Objects.requireNonNull(Looks.class.getResource(name), name).toExternalForm();
    }
}
