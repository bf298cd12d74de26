package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.Parent;
import javafx.scene.control.Slider;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.lessons.FigureKind;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.window.parts.Pages;

/** A value is rounded in one way, however often a figure says it. */
@FxTest
class OneRoundingTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+\\.\\d+|\\d+");
    private static final int SHORT = 3;

    @ParameterizedTest
    @EnumSource(FigureKind.class)
    void noNumberIsTheRoundingOfAnother(final FigureKind kind) {
        final Parent page =
                Pages.page(
                        "Figure", LiveFigures.of(BuiltInFigures.of(kind), BuiltInFigures.SOLVER));
        Screens.scene(page, Screens.Setting.LIGHT);
        final Drawing drawing =
                (Drawing)
                        page.lookupAll("*").stream()
                                .filter(Drawing.class::isInstance)
                                .findFirst()
                                .orElseThrow();
        for (final double share : new double[] {0, 0.3, 0.7, 1}) {
            page.lookupAll(".slider").forEach(each -> move((Slider) each, share));
            assertThat(roundings(drawing.getAccessibleText()))
                    .as(drawing.getAccessibleText())
                    .isEmpty();
        }
    }

    private static void move(final Slider slider, final double share) {
        slider.setValue(Math.rint(share * slider.getMax()));
    }

    /** What is said in short of something that is said in full as well. */
    private static Set<String> roundings(final String words) {
        final Set<String> said =
                NUMBER.matcher(words)
                        .results()
                        .map(MatchResult::group)
                        .collect(Collectors.toCollection(TreeSet::new));
        return said.stream()
                .map(OneRoundingTest::inShort)
                .filter(said::contains)
                .collect(Collectors.toSet());
    }

    /** Nothing where it is no shorter. */
    private static String inShort(final String value) {
        final BigDecimal full = new BigDecimal(value);
        final BigDecimal less = full.round(new MathContext(SHORT));
        return less.compareTo(full) == 0 ? "" : less.toPlainString();
    }
}
