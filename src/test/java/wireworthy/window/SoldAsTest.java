package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.practice.Banks;
import wireworthy.practice.Template;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/** Exercises by section or by gauge, whichever the learner buys by. */
class SoldAsTest {
    private static final List<Template> ALL = Banks.read(List.of()).templates();

    private static Set<String> fitting(final WireSizes sizes) {
        return new SoldAs(sizes).of(ALL).stream().map(Template::fullId).collect(Collectors.toSet());
    }

    @Test
    void bySectionNoGaugesAreAskedWhereThereIsEnoughElse() {
        assertThat(fitting(WireSizes.MM2))
                .contains("voltage-drop/aisle-strips-drop")
                .doesNotContain("volts-that-arrive/drop-in-gauge", "fuse-margin/ceiling-by-gauge");
    }

    @Test
    void byGaugeNoSectionsAreAskedWhereThereIsEnoughElse() {
        assertThat(fitting(WireSizes.AWG))
                .contains("volts-that-arrive/drop-in-gauge", "voltage-drop/fan-drop-by-resistance")
                .doesNotContain("voltage-drop/aisle-strips-drop");
    }

    @ParameterizedTest
    @EnumSource(WireSizes.class)
    void noSkillIsLost(final WireSizes sizes) {
        final Set<Skill> kept =
                new SoldAs(sizes).of(ALL).stream().map(Template::skill).collect(Collectors.toSet());
        assertThat(kept).isEqualTo(ALL.stream().map(Template::skill).collect(Collectors.toSet()));
    }
}
