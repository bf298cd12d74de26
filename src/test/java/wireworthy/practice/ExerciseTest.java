package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Solver;

class ExerciseTest {
    private final Draw draw = new Draw(new Solver());

    private Stream<Exercise> drawn(final String id) {
        final Template template = TestBanks.template("heron-kinds", id);
        return LongStream.rangeClosed(1, 60).mapToObj(seed -> draw.exercise(template, seed));
    }

    private Stream<ChoiceProblem> choices(final String id) {
        return drawn(id).map(ChoiceProblem.class::cast);
    }

    @Test
    void aWholeJobAsksItsPartsInOrder() {
        final Problem problem = (Problem) drawn("house-lamps-whole").findFirst().orElseThrow();

        assertThat(problem.template().wholeJob()).isTrue();
        assertThat(problem.parts())
                .extracting(Problem.Part::ref)
                .containsExactly(
                        Ref.circuit(Quantity.LOAD_CURRENT),
                        Ref.circuit(Quantity.FUSE_FLOOR),
                        Ref.circuit(Quantity.FUSE));
        assertThat(problem.ask()).isEqualTo("Which fuse?");
    }

    @Test
    void theEngineSaysWhichOptionIsRight() {
        assertThat(choices("which-limit"))
                .allSatisfy(
                        choice -> {
                            final double drop =
                                    choice.circuit()
                                            .orElseThrow()
                                            .value(Quantity.SECTION_FOR_DROP)
                                            .orElseThrow();
                            final double heat =
                                    choice.circuit()
                                            .orElseThrow()
                                            .value(Quantity.SECTION_FOR_AMPACITY)
                                            .orElseThrow();
                            assertThat(choice.right().text())
                                    .startsWith(drop > heat ? "The drop" : "The heat");
                            assertThat(choice.right().why()).doesNotContain("{");
                        });
    }

    @Test
    void bothLimitsAreRightInSomeDraw() {
        assertThat(choices("which-limit").map(c -> c.right().text().substring(0, 8)).distinct())
                .containsExactlyInAnyOrder("The drop", "The heat");
    }

    @Test
    void optionsStandInEveryOrder() {
        final Map<Integer, Long> places =
                choices("comes-back")
                        .collect(
                                Collectors.groupingBy(
                                        c -> c.options().indexOf(c.right()),
                                        Collectors.counting()));

        assertThat(places.values()).hasSize(3).allMatch(count -> count > 10);
    }

    @Test
    void stepsAreShownMixedAndMarkedByTheFirstThatIsOut() {
        assertThat(drawn("isolate").map(OrderProblem.class::cast))
                .allSatisfy(
                        order -> {
                            assertThat(order.shown()).containsExactlyInAnyOrder(0, 1, 2, 3);
                            assertThat(order.departsAt(order.shown())).isPresent();
                            assertThat(order.departsAt(List.of(0, 1, 2, 3))).isEmpty();
                            assertThat(order.departsAt(List.of(0, 2, 1, 3))).hasValue(1);
                        });
    }

    @Test
    void anEstimateIsAmongThreePowersOfTen() {
        assertThat(choices("fan-roughly"))
                .allSatisfy(
                        choice -> {
                            assertThat(choice.options()).hasSize(3);
                            assertThat(choice.right().text()).isEqualTo("10 A");
                            assertThat(choice.right().why()).endsWith("near 10 A.");
                        });
        assertThat(choices("fan-roughly").map(c -> c.options().get(0).text()).distinct())
                .containsExactlyInAnyOrder("0.1 A", "1 A", "10 A");
    }

    @Test
    void aHuntHidesOneSlipInAWorking() {
        final Template template = TestBanks.template("heron-feeds", "aisle-strips-drop");
        for (long seed = 1; seed <= 40; seed++) {
            final SlipHunt hunt = draw.hunt(template, seed, List.of()).orElseThrow();

            assertThat(hunt.rows()).hasSizeGreaterThanOrEqualTo(2);
            assertThat(hunt.wrong()).isBetween(0, hunt.rows().size() - 1);
            assertThat(hunt.slip().ids()).hasSize(1);
        }
    }

    @Test
    void aHuntTakesOnesOwnSlipsFirst() {
        final Template template = TestBanks.template("heron-feeds", "aisle-strips-drop");

        assertThat(draw.hunt(template, 3, List.of("one-way-length")).orElseThrow().slip().ids())
                .containsExactly("one-way-length");
    }

    @Test
    void sameSeedSameExercise() {
        for (final String id : List.of("which-limit", "comes-back", "isolate", "fan-roughly")) {
            assertThat(drawn(id).map(ExerciseTest::shown))
                    .isEqualTo(drawn(id).map(ExerciseTest::shown).toList());
        }
    }

    private static String shown(final Exercise exercise) {
        return exercise instanceof ChoiceProblem choice
                ? choice.text() + choice.options()
                : ((OrderProblem) exercise).shown().toString();
    }
}
