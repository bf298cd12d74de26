package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.marking.SlipFigures;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/** Over the banks that came with the program and the two of the tests. */
class BuiltInBanksTest {
    private static final int SEEDS = 40;
    private static final int MEDIAN_DRAWS = 5;
    private static final int WORST_DRAWS = 20;
    private static final int ENOUGH_TEMPLATES = 5;
    private static final double SOUND = 0.011;

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
                .allSatisfy(problem -> assertThat(problem.closeness().near()).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("templates")
    void fewDrawsAreEnough(final Template template) {
        final List<Integer> draws =
                problems(template).stream().map(Problem::draws).sorted().toList();
        assertThat(draws.get(SEEDS / 2)).isLessThanOrEqualTo(MEDIAN_DRAWS);
        assertThat(draws.get(SEEDS - 1)).isLessThanOrEqualTo(WORST_DRAWS);
    }

    /** So that mixed practice does not come back to one text too soon. */
    @ParameterizedTest
    @EnumSource(
            names = {
                "UNITS_AND_PREFIXES",
                "OUT_AND_BACK_LENGTH",
                "CONDUCTOR_SECTION",
                "RESISTANCE_OF_A_CABLE",
                "DROP",
                "DROP_IN_PERCENT",
                "VOLTAGE_AT_THE_LOAD",
                "SECTION_FOR_A_DROP_LIMIT",
                "NEXT_STANDARD_SIZE",
                "WHICH_LIMIT_GOVERNS",
                "POWER_LOST",
                "CHANGE_OF_SYSTEM_VOLTAGE",
            })
    void aSkillOnCablesHasTemplatesOfEveryDifficulty(final Skill skill) {
        final List<Template> of =
                Banks.read(List.of()).templates().stream()
                        .filter(template -> template.skill() == skill)
                        .toList();

        assertThat(of).hasSizeGreaterThanOrEqualTo(ENOUGH_TEMPLATES);
        assertThat(of).extracting(Template::difficulty).contains(-1, 0, 1);
    }

    /** A slip that no problem lets one make is never explained. */
    @Test
    void slipsOnCablesCanBeMade() {
        final Set<String> made =
                Banks.read(List.of()).templates().stream()
                        .flatMap(this::slips)
                        .collect(Collectors.toSet());

        assertThat(made)
                .contains("milli-as-unit", "milli-as-hundredth", "milliohm-as-ohm")
                .contains("centimetre-as-metre", "feet-as-metre", "power-of-ten")
                .contains("diameter-for-area", "quarter-forgotten", "doubling-linear")
                .contains("gauge-number-as-size", "aught-for-plain", "parallel-adds-resistance")
                .contains("one-way-length", "return-counted-twice", "longer-leg-only")
                .contains("area-multiplied", "diameter-for-area-in-drop", "aluminium-resistivity")
                .contains("current-left-out", "current-squared", "start-current-ignored")
                .contains("drop-for-remaining", "remaining-for-drop", "drop-added")
                .contains("load-voltage-base", "mains-base", "fraction-for-percent")
                .contains("percent-upside-down", "percent-as-volts", "percent-not-divided")
                .contains("section-upside-down", "limit-multiplied", "longest-run-not-halved")
                .contains("loss-current-not-squared", "loss-from-full-supply")
                .contains("section-rounded-down", "section-skipped", "higher-voltage-halves")
                .contains("drop-governs-only", "ampacity-governs-only");
    }

    private Stream<String> slips(final Template template) {
        if (template.task() instanceof Task.Choose choose) {
            return choose.options().stream().flatMap(option -> option.slip().stream());
        }
        return template.asksFigures()
                ? problems(template).stream().flatMap(BuiltInBanksTest::slips)
                : Stream.empty();
    }

    private static Stream<String> slips(final Problem problem) {
        final double right = problem.worked().value(problem.asked()).orElseThrow();
        return SlipFigures.of(problem.worked(), problem.asked()).stream()
                .filter(slip -> Math.abs(slip.value() - right) > SOUND * Math.abs(right))
                .flatMap(slip -> slip.ids().stream());
    }
}
