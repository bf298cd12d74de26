package wireworthy.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/**
 * Renders a screen in the settings it must bear and writes each as {@code
 * target/screens/name-setting.png}. Call on the JavaFX thread.
 */
public final class Screens {
    /** The settings in which every screen is looked at. */
    public enum Setting {
        LIGHT(Theme.LIGHT, 100, 1280, 860),
        DARK(Theme.DARK, 100, 1280, 860),
        LARGE(Theme.LIGHT, 150, 1280, 860),
        SMALL(Theme.LIGHT, 100, 1024, 700),
        LARGEST(Theme.LIGHT, 200, 1024, 700);

        private final Theme theme;
        private final int textPerCent;
        private final double width;
        private final double height;

        Setting(final Theme theme, final int textPerCent, final double width, final double height) {
            this.theme = theme;
            this.textPerCent = textPerCent;
            this.width = width;
            this.height = height;
        }
    }

    private static final Path FOLDER = Path.of("target", "screens");

    private Screens() {}

    /** Renders the node, built afresh for each setting. */
    public static void render(final String name, final Supplier<? extends Parent> node) {
        for (final Setting setting : Setting.values()) {
            write(name, setting, scene(node.get(), setting));
        }
    }

    /**
     * The node laid out in the setting, without a stage. Laid out twice, as what arranges itself by
     * the room it gets is ready in the second frame.
     */
    public static Scene scene(final Parent node, final Setting setting) {
        final Scene scene = dressed(node, setting);
        settle(scene);
        return scene;
    }

    /** Lays a scene out anew after something was done in it. */
    public static void settle(final Scene scene) {
        scene.snapshot(null);
        scene.snapshot(null);
    }

    private static Scene dressed(final Parent node, final Setting setting) {
        final Scene scene = new Scene(node, setting.width, setting.height);
        Looks.dress(scene, setting.theme, setting.textPerCent);
        return scene;
    }

    /** Texts that end in three dots for want of room, and pages cut off at their right. */
    public static List<String> cutOff(final Parent root) {
        final List<String> found = new ArrayList<>();
        root.lookupAll(".text")
                .forEach(
                        node -> {
                            if (node instanceof Text text
                                    && text.getParent() instanceof Labeled labeled
                                    && isSeen(labeled)
                                    && !text.getText().equals(said(labeled))) {
                                found.add(labeled.getText());
                            }
                        });
        root.lookupAll(".page-scroll")
                .forEach(
                        node -> {
                            if (node instanceof ScrollPane page && tooWide(page)) {
                                found.add(
                                        "The page %s is wider than its view: %.0f, %.0f"
                                                .formatted(
                                                        page.getAccessibleText(),
                                                        page.getContent()
                                                                .getLayoutBounds()
                                                                .getWidth(),
                                                        page.getViewportBounds().getWidth()));
                            }
                        });
        return found;
    }

    /** Texts that reach out of what holds them, to the left or to the right. */
    public static List<String> beside(final Parent root) {
        final List<String> found = new ArrayList<>();
        root.lookupAll(".label")
                .forEach(
                        node -> {
                            if (node instanceof Label label
                                    && isSeen(label)
                                    && !label.getText().isBlank()
                                    && reachesOut(label)) {
                                found.add(label.getText());
                            }
                        });
        return found;
    }

    private static boolean reachesOut(final Label label) {
        final double left = label.getLayoutX() + label.getTranslateX();
        return label.getParent() instanceof Region region
                && region.getWidth() > 0
                && (left < -1 || left + label.getWidth() > region.getWidth() + 1);
    }

    /** Whether a page that never scrolls sideways would have to. */
    private static boolean tooWide(final ScrollPane page) {
        return page.getHbarPolicy() == ScrollPane.ScrollBarPolicy.NEVER
                && isSeen(page)
                && page.getViewportBounds().getWidth() > 0
                && page.getContent().getLayoutBounds().getWidth()
                        > page.getViewportBounds().getWidth() + 1;
    }

    /** Its text without the sign before the letter that is its key. */
    private static String said(final Labeled labeled) {
        return labeled.isMnemonicParsing()
                ? labeled.getText().replaceFirst("_(?=.)", "")
                : labeled.getText();
    }

    private static boolean isSeen(final Node node) {
        for (Node it = node; it != null; it = it.getParent()) {
            if (!it.isVisible()) {
                return false;
            }
        }
        return true;
    }

    /** Writes a picture of each part of this style in a scene, side by side with nothing else. */
    public static void writeParts(final String name, final String style, final Scene scene) {
        int number = 0;
        for (final Node part : scene.getRoot().lookupAll("." + style)) {
            try {
                Png.write(part.snapshot(null, null), FOLDER.resolve(name + ++number + ".png"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Writes a picture of a scene as it stands. */
    public static void write(final String name, final Setting setting, final Scene scene) {
        final String file = name + "-" + setting.name().toLowerCase(Locale.ROOT);
        try {
            Png.write(scene.snapshot(null), FOLDER.resolve(file + ".png"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
