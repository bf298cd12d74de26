package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.marking.Marker;
import wireworthy.marking.SlipFigures;
import wireworthy.rules.FigureText;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;
import wireworthy.working.Worked;

class LineByLineTest {
    private static final Banks BANKS = Banks.read(List.of());
    private static final Draw DRAW = new Draw(new Solver());

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    # answers | chance | rights running | state
                    0 | .90 | 0 | SHOWN
                    1 | .10 | 0 | SHOWN
                    4 | .399 | 3 | SHOWN
                    4 | .40 | 0 | ASKED
                    4 | .70 | 4 | ASKED
                    4 | .85 | 4 | ASKED
                    4 | .86 | 2 | ASKED
                    4 | .86 | 3 | FOLDED
                    9 | .99 | 4 | FOLDED
                    """)
    void aLineIsShownAskedOrFoldedByHowFirmlyItsSkillHolds(
            final int answers, final double chance, final int running, final LineState state) {
        assertThat(LineState.of(answers, chance, running)).isEqualTo(state);
    }

    /** Histories are lists of answers: the skill, then + for right unaided and - for not. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    '' | loop length shown, loop resistance shown, drop yours
                    DROP++++++ | loop length shown, loop resistance shown, drop yours
                    OUT_AND_BACK_LENGTH++ | loop length yours, loop resistance shown, drop yours
                    OUT_AND_BACK_LENGTH+++++ | loop length folded, loop resistance shown, drop yours
                    OUT_AND_BACK_LENGTH+++++- | loop length yours, loop resistance shown, drop yours
                    RESISTANCE_OF_A_CABLE---- | loop length shown, loop resistance shown, drop yours
                    """)
    void theLinesOfADropFadeOneByOne(final String history, final String lines) {
        final Problem problem = problem("voltage-drop", "aisle-strips-drop");

        assertThat(
                        opened(problem, history).stream()
                                .map(line -> line.name() + " " + line.state().words()))
                .isEqualTo(List.of(lines.split(", ")));
    }

    @Test
    void theLineOfTheMainSkillIsAskedThoughItIsNotTheLast() {
        final Problem problem = problem("voltage-drop", "pump-drop-by-the-reel");

        assertThat(opened(problem, "").stream())
                .extracting(ProblemLine::skill, ProblemLine::main, ProblemLine::state)
                .endsWith(
                        tuple(Skill.RESISTANCE_OF_A_CABLE, true, LineState.ASKED),
                        tuple(Skill.DROP, false, LineState.ASKED));
    }

    @ParameterizedTest
    @MethodSource("templates")
    void theLastLineIsTheAnswerAndNeverShown(final Template template) {
        final Problem problem = DRAW.problem(template, 1);
        final List<ProblemLine> lines = opened(problem, "");
        final ProblemLine last = lines.get(lines.size() - 1);

        assertThat(last.ref()).isEqualTo(problem.asked());
        assertThat(last.state()).isEqualTo(LineState.ASKED);
        assertThat(lines.stream().filter(ProblemLine::main))
                .singleElement()
                .extracting(ProblemLine::state)
                .isEqualTo(LineState.ASKED);
    }

    @ParameterizedTest
    @MethodSource("templates")
    void eachLineIsWorkedFromGivensAndEarlierLines(final Template template) {
        for (final ProblemLine line : opened(DRAW.problem(template, 1), "")) {
            assertThat(line.needs()).isNotEmpty();
            assertThat(line.standsOn()).allMatch(number -> number < line.number());
        }
    }

    @ParameterizedTest
    @MethodSource("templates")
    void eachLevelOfHelpSaysMoreAndTheLastTheLineWorked(final Template template) {
        for (final ProblemLine line : opened(DRAW.problem(template, 1), "")) {
            final List<String> levels =
                    Stream.of(Help.values()).map(level -> level.text(line)).toList();

            assertThat(levels).doesNotHaveDuplicates().noneMatch(text -> text.contains("{"));
            assertThat(levels.get(3)).contains(line.told().numbers());
        }
    }

    /** Figures that only two slips together give: a single slip, and the point one place off. */
    @ParameterizedTest
    @MethodSource("templates")
    void aLineThatTheMarkAsksForIsOneOfTheLines(final Template template) {
        final Problem problem = DRAW.problem(template, 1);
        final Worked worked = problem.worked();
        final List<Ref> lines = opened(problem, "").stream().map(ProblemLine::ref).toList();

        assertThat(SlipFigures.of(worked, problem.asked()))
                .filteredOn(outcome -> Double.isFinite(outcome.value()))
                .flatExtracting(outcome -> asked(problem, 10 * outcome.value()))
                .allMatch(ref -> lines.contains(LineByLine.origin(worked, ref)));
    }

    private static List<Ref> asked(final Problem problem, final double si) {
        final String typed = FigureText.number(si, problem.asked().quantity().dimension(), 6);
        return Marker.mark(problem.worked(), problem.asked(), typed).ask().stream().toList();
    }

    @Test
    void helpComesInFourLevels() {
        final ProblemLine line = opened(problem("voltage-drop", "aisle-strips-drop"), "").get(1);

        assertThat(Stream.of(Help.values()).map(level -> level.text(line)))
                .satisfiesExactly(
                        needed ->
                                assertThat(needed)
                                        .isEqualTo(
                                                "Needed here: resistivity (given), loop length"
                                                        + " (line 1) and section (given)."),
                        rule ->
                                assertThat(rule)
                                        .isEqualTo(
                                                "The rule, length over section: loop resistance ="
                                                        + " resistivity × loop length ÷ section."),
                        numbers ->
                                assertThat(numbers)
                                        .matches(
                                                "With these numbers: 0\\.0172 × [\\d.]+ ÷"
                                                        + " [\\d.]+\\."),
                        worked -> assertThat(worked).matches("Worked: .* = [\\d.]+ m?Ω\\."));
    }

    static Stream<Template> templates() {
        return BANKS.templates().stream().filter(Template::asksFigures);
    }

    private static Problem problem(final String bank, final String id) {
        return DRAW.problem(BANKS.template(bank, id).orElseThrow(), 1);
    }

    private static List<ProblemLine> opened(final Problem problem, final String history) {
        final List<Answered> answers = new ArrayList<>();
        final String skill = history.replaceAll("[+-]", "");
        history.substring(skill.length())
                .chars()
                .forEach(
                        sign ->
                                answers.add(
                                        new Answered(
                                                Skill.valueOf(skill),
                                                new Moment(0, 0),
                                                sign == '+',
                                                false,
                                                false,
                                                0,
                                                "bank/template",
                                                answers.size())));
        return LineByLine.of(problem, Skills.of(answers), 0);
    }
}
