package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;

class DrawTest {
    private final Draw draw = new Draw(new Solver());

    /** Printed sheets name bank, version, template and seed: their numbers must never change. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    1 | 5.4 A | 2.5 mm² | 9.2 m
                    2 | 4.8 A | 1.5 mm² | 5.6 m
                    90210 | 3.2 A | 2.5 mm² | 10.8 m
                    """)
    void sameSeedSameProblem(
            final long seed, final String amps, final String section, final String metres) {
        final Template template = TestBanks.template("heron-feeds", "aisle-strips-drop");

        assertThat(draw.problem(template, seed).text())
                .isEqualTo(
                        "The Heron's aisle strips draw "
                                + amps
                                + " together from 12 V. Their cable is "
                                + section
                                + " and runs "
                                + metres
                                + " from the fuse board to the strips. Copper: 0.0172 Ω·mm²/m.");
        assertThat(draw.problem(template, seed))
                .usingRecursiveComparison()
                .ignoringFields("worked")
                .isEqualTo(new Draw(new Solver()).problem(template, seed));
    }

    @Test
    void anotherSeedAnotherProblem() {
        final Template template = TestBanks.template("heron-feeds", "aisle-strips-drop");

        assertThat(LongStream.range(0, 30).mapToObj(seed -> draw.problem(template, seed).text()))
                .doesNotHaveDuplicates();
    }

    @Test
    void drawsOnTheGridAndWorksWithTheSameFigures() {
        final Template template = TestBanks.template("heron-feeds", "aisle-strips-drop");
        for (long seed = 0; seed < 40; seed++) {
            final Problem problem = draw.problem(template, seed);
            final double amps = problem.worked().value(Quantity.CIRCUIT_CURRENT).orElseThrow();

            assertThat(amps).isBetween(2.0, 9.0);
            assertThat(Math.rint(amps * 10) / 10).isEqualTo(amps);
            assertThat(problem.asked().quantity()).isEqualTo(Quantity.DROP);
            assertThat(problem.worked().value(problem.asked())).isPresent();
        }
    }

    @Test
    void mentionsLoadsByTheirPlaceInTheList() {
        final Template template = TestBanks.template("heron-feeds", "house-lamps-together");

        assertThat(draw.problem(template, 1).text())
                .matches(
                        "On one feed of 12 V hang \\d house lamps of [\\d.]+ W each .* [\\d.]+"
                                + " A\\.");
    }

    @Test
    void writesUnitsAsTheyArePrinted() {
        final Template template = TestBanks.template("heron-fuses", "cart-fan-section");

        assertThat(draw.problem(template, 4).text())
                .contains(" 3 %")
                .endsWith("Copper: 0.0172 Ω·mm²/m.");
    }

    @Test
    void takesTheBestOfSixtyWhereSlipsCannotStandApart() {
        // 1.25 x 8 A is a rating itself, so a little rounding takes another fuse.
        final Template template =
                template(
                        Map.of(
                                "circuit-current", new Given.Fixed("8 A"),
                                "margin", new Given.Fixed("1.25"),
                                "fuse-series", new Given.Fixed("blade")),
                        Quantity.FUSE);

        final Problem problem = draw.problem(template, 1);

        assertThat(problem.draws()).isEqualTo(60);
        assertThat(problem.apart()).isFalse();
        assertThat(problem.closeness().confused())
                .containsExactly("fuse-floor and a standard size");
    }

    @Test
    void refusesWhatNoDrawCanWork() {
        final Template template =
                template(Map.of("circuit-current", new Given.Fixed("8 A")), Quantity.DROP);

        assertThatThrownBy(() -> draw.problem(template, 1)).isInstanceOf(Unworkable.class);
    }

    private static Template template(final Map<String, Given> given, final Quantity find) {
        return new Template(
                "bank",
                1,
                "id",
                Skill.FUSE_CHOICE,
                0,
                "Text.",
                Drawing.LAMP,
                given,
                Task.Figures.one("Which?", find),
                false);
    }

    @Test
    void testBanksAreSound() {
        assertThat(TestBanks.read().problems()).isEqualTo(List.of());
    }
}
