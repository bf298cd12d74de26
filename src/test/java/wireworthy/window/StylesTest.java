package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wireworthy.window.parts.Styles;

/** Code and sheets speak of the same style classes, and of colours only by their names. */
class StylesTest {
    private static final Pattern STYLE_CLASS = Pattern.compile("\\.([a-z][a-z-]*)");

    /** Classes that JavaFX and the base theme give to their own controls. */
    private static final Set<String> TOOLKIT =
            Set.of(
                    "root",
                    "popup",
                    "text",
                    "label",
                    "button",
                    "menu-button",
                    "arrow-button",
                    "arrow",
                    "context-menu",
                    "menu-item",
                    "accelerator-text",
                    "separator",
                    "text-field",
                    "combo-box-base",
                    "list-cell",
                    "box",
                    "radio-button",
                    "radio",
                    "dot",
                    "check-box",
                    "mark",
                    "slider",
                    "track",
                    "progress",
                    "hyperlink",
                    "text-area",
                    "content",
                    "viewport",
                    "scroll-bar",
                    "thumb",
                    "line");

    @Test
    void everyClassInTheSheetsIsAConstant() {
        final Set<String> known =
                Arrays.stream(Styles.class.getFields())
                        .map(StylesTest::value)
                        .collect(Collectors.toSet());
        final Set<String> used =
                Looks.SHEETS.stream()
                        .flatMap(it -> selectors(sheet(it)))
                        .filter(it -> !TOOLKIT.contains(it))
                        .collect(Collectors.toSet());
        assertThat(known).as("constants in Styles").containsAll(used);
    }

    @Test
    void onlyTheThemesNameColoursByNumber() {
        assertThat(Looks.SHEETS)
                .allSatisfy(it -> assertThat(sheet(it)).doesNotContainPattern("#|rgb"));
    }

    private static Stream<String> selectors(final String sheet) {
        final String withoutBodies =
                sheet.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?s)\\{.*?}", "");
        return STYLE_CLASS.matcher(withoutBodies).results().map(it -> it.group(1));
    }

    private static String value(final Field constant) {
        try {
            return (String) constant.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    private static String sheet(final String name) {
        try (InputStream file = Looks.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
