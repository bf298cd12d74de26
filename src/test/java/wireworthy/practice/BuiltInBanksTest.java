package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.working.Solver;

/** Over the banks that came with the program and the two of the tests. */
class BuiltInBanksTest {
    private static final int SEEDS = 40;

    private final Draw draw = new Draw(new Solver());

    private static Stream<Template> templates() {
        return Stream.concat(
                        Banks.read(List.of()).templates().stream(),
                        TestBanks.read().templates().stream())
                .filter(Template::asksFigures);
    }

    private List<Problem> problems(final Template template) {
        return LongStream.rangeClosed(1, SEEDS)
                .mapToObj(seed -> draw.problem(template, seed))
                .toList();
    }

    @Test
    void areReadWithoutProblems() {
        assertThat(Banks.read(List.of()).problems()).isEmpty();
    }

    /** So that a wrong figure in three digits names its slip. */
    @ParameterizedTest
    @MethodSource("templates")
    void slipsAreToldApartInEveryProblem(final Template template) {
        assertThat(problems(template))
                .allSatisfy(problem -> assertThat(problem.closeness().confused()).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("templates")
    void fiveDrawsAreEnoughInTheMedian(final Template template) {
        final List<Integer> draws =
                problems(template).stream().map(Problem::draws).sorted().toList();
        assertThat(draws.get(SEEDS / 2)).isLessThanOrEqualTo(5);
    }
}
