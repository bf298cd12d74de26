package wireworthy.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.rules.Quantity;

/** A thousand random questions, worked a second time in straight lines apart from the engine. */
class SecondCalculationTest {
    private static final int EACH = 50;
    private static final double SAME = 1e-9;

    static Stream<String> families() {
        return Families.all().keySet().stream();
    }

    private static List<Draw> draws(final String family) {
        final Random random = new Random(family.hashCode());
        return IntStream.range(0, EACH)
                .mapToObj(
                        i -> {
                            final Draw draw = new Draw(random);
                            Objects.requireNonNull(Families.all().get(family)).accept(draw);
                            return draw;
                        })
                .toList();
    }

    @ParameterizedTest
    @MethodSource("families")
    void bothCalculationsAgree(final String family) {
        draws(family).forEach(SecondCalculationTest::agrees);
    }

    private static void agrees(final Draw draw) {
        final Worked worked = Asking.worked(draw.question());
        draw.expected()
                .forEach(
                        (id, value) ->
                                assertThat(found(worked, id))
                                        .as("%s of %s", id, draw.question())
                                        .satisfies(found -> same(found, value)));
    }

    private static void same(final double found, final double value) {
        if (Double.isNaN(value)) {
            assertThat(found).isNaN();
        } else {
            assertThat(found).isCloseTo(value, within(SAME * Math.abs(value)));
        }
    }

    /** NaN where nothing fits or the program refuses. */
    private static double found(final Worked worked, final String id) {
        try {
            return Asking.found(worked, Quantity.of(id).orElseThrow());
        } catch (final Unworkable why) {
            return Double.NaN;
        }
    }

    @Test
    void theyAreAThousandQuestionsAndFewHaveNothingThatFits() {
        final List<Double> values =
                families()
                        .flatMap(family -> draws(family).stream())
                        .flatMap(draw -> draw.expected().values().stream())
                        .toList();

        assertThat(families()).hasSize(1000 / EACH);
        assertThat(values.stream().filter(value -> value.isNaN()).count())
                .isBetween(20L, values.size() / 10L);
    }

    /** All figures of one circuit with the values taken unless given, by id. */
    private static Map<String, String> circuit(final Random random) {
        final Draw d = new Draw(random);
        final double volts = d.one(12, 13.2, 24, 48);
        final double amps = d.number(1, 8);
        final double metres = d.number(1, 6);
        final double mm2 = d.number(1, 10);
        final double ohms = 0.0172 * 2 * metres / mm2;
        final Map<String, String> all = new LinkedHashMap<>();
        all.put("supply-voltage", volts + " V");
        all.put("load-power", volts * amps + " W");
        all.put("load-current", amps + " A");
        all.put("circuit-current", amps + " A");
        all.put("fuse-floor", 1.25 * amps + " A");
        all.put("margin", "1.25");
        all.put("one-way-length", metres + " m");
        all.put("loop-length", 2 * metres + " m");
        all.put("section", mm2 + " mm2");
        all.put("resistivity", "0.0172 ohm mm2/m");
        all.put("resistance-per-length", 17.2 / mm2 + " mohm/m");
        all.put("loop-resistance", ohms + " ohm");
        all.put("drop", amps * ohms + " V");
        all.put("drop-percent", 100 * amps * ohms / volts + " %");
        all.put("voltage-at-load", volts - amps * ohms + " V");
        all.put("power-lost", amps * amps * ohms + " W");
        all.put("drop-limit", 0.03 * volts + " V");
        all.put("section-for-drop", 0.0172 * 2 * metres * amps / (0.03 * volts) + " mm2");
        all.put("longest-run", 0.03 * volts * mm2 / (2 * 0.0172 * amps) + " m");
        return all;
    }

    @Test
    void everyRoadToAFigureLeadsToTheSame() {
        final Random random = new Random(20_26);
        final Map<String, Integer> worked = new LinkedHashMap<>();
        for (int i = 0; i < 4000; i++) {
            final Map<String, String> all = circuit(random);
            final List<String> ids = new ArrayList<>(all.keySet());
            Collections.shuffle(ids, random);
            final String asked = ids.get(0);
            final Map<String, String> given = new LinkedHashMap<>();
            ids.subList(1, 4 + random.nextInt(4)).forEach(id -> given.put(id, all.get(id)));
            if (leadsToTheSame(asked, given, Objects.requireNonNull(all.get(asked)))) {
                worked.merge(asked, 1, Integer::sum);
            }
        }
        assertThat(worked).hasSizeGreaterThanOrEqualTo(18);
        assertThat(worked.values()).allSatisfy(times -> assertThat(times).isGreaterThan(10));
    }

    /** Whether the figure could be had from what is given. */
    private static boolean leadsToTheSame(
            final String asked, final Map<String, String> given, final String value) {
        final Draw draw = new Draw(new Random(0));
        given.forEach(draw::says);
        draw.expects(asked, Double.parseDouble(value.substring(0, (value + " ").indexOf(' '))));
        try {
            agrees(draw);
            return true;
        } catch (final Unworkable why) {
            assertThat(why.what()).doesNotContain("contradict");
            return false;
        }
    }
}
