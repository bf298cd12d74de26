package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The colours of both themes reach the contrast of WCAG 2.2 AA wherever they are used. */
class ThemeTest {
    private static final double TEXT = 4.5;
    private static final double PART = 3;
    private static final Pattern TOKEN = Pattern.compile("-([a-z-]+): (#[0-9A-F]{6});");

    @ParameterizedTest
    @CsvSource({
        "ink, paper",
        "ink, sheet",
        "ink, line",
        "ink, verdigris-ground",
        "ink, brick-ground",
        "soft, paper",
        "soft, sheet",
        "soft, verdigris-ground",
        "soft, brick-ground",
        "copper, paper",
        "copper, sheet",
        "copper, verdigris-ground",
        "copper, brick-ground",
        "verdigris, sheet",
        "verdigris, paper",
        "verdigris, verdigris-ground",
        "brick, sheet",
        "brick, paper",
        "brick, brick-ground",
        "amber, sheet",
        "amber, paper",
        "paper, ink",
        "paper, soft",
        "sheet, copper"
    })
    void textCanBeRead(final String text, final String ground) {
        for (final Theme theme : Theme.values()) {
            assertThat(contrast(theme, text, ground)).as("%s", theme).isGreaterThanOrEqualTo(TEXT);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "joint, paper",
        "joint, sheet",
        "joint, verdigris-ground",
        "joint, brick-ground",
        "copper, paper",
        "copper, sheet",
        "copper, verdigris-ground",
        "copper, brick-ground",
        "copper, line",
        "verdigris, paper",
        "verdigris, sheet",
        "verdigris, verdigris-ground",
        "brick, paper",
        "brick, sheet",
        "brick, brick-ground",
        "amber, paper",
        "amber, sheet",
        "ink, paper",
        "ink, sheet"
    })
    void outlinesThatCarryMeaningCanBeSeen(final String part, final String ground) {
        for (final Theme theme : Theme.values()) {
            assertThat(contrast(theme, part, ground)).as("%s", theme).isGreaterThanOrEqualTo(PART);
        }
    }

    /** Hairlines only part what is apart anyway: no meaning hangs on the token line. */
    @Test
    void everyTokenIsHeldAgainstAGround() {
        final Set<String> held =
                Stream.of(ThemeTest.class.getDeclaredMethods())
                        .flatMap(method -> Stream.of(method.getAnnotationsByType(CsvSource.class)))
                        .flatMap(source -> Stream.of(source.value()))
                        .flatMap(pair -> Stream.of(pair.split(", ")))
                        .collect(Collectors.toSet());
        assertThat(held).isEqualTo(tokens(Theme.LIGHT).keySet());
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyThemeNamesTheSameColours(final Theme theme) {
        assertThat(tokens(theme)).hasSize(12).containsOnlyKeys(tokens(Theme.LIGHT).keySet());
    }

    @Test
    void blackOnWhiteIsTheGreatestContrast() {
        assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
    }

    private static double contrast(final Theme theme, final String one, final String other) {
        final Map<String, Color> tokens = tokens(theme);
        return contrast(tokens.get(one), tokens.get(other));
    }

    /** Contrast ratio by WCAG 2.2, from 1 to 21. */
    private static double contrast(final Color one, final Color other) {
        final double lighter = Math.max(luminance(one), luminance(other));
        final double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(final Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(final double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    private static Map<String, Color> tokens(final Theme theme) {
        return TOKEN.matcher(sheet(theme))
                .results()
                .collect(Collectors.toMap(it -> it.group(1), it -> Color.web(it.group(2))));
    }

    private static String sheet(final Theme theme) {
        try (InputStream file = Theme.class.getResourceAsStream(theme.sheet())) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
