package wireworthy.evening.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.Reply;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.paper.PaperSize;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.rules.FigureText;
import wireworthy.rules.Skill;

/** A class of 30, made up: what they stumble over is said first. */
class SummaryTest {
    private static final Instant NOW = Instant.parse("2026-03-04T19:05:06Z");
    private static final Shelf SHELF = Shelf.builtIn();
    private static final Set<String> COMMON = Set.of("one-way-length", "margin-left-out");
    private static final Sheet SHEET =
            Sheet.of(
                    new SheetPlan(
                            Pick.BySkills.of(
                                    Set.of(Skill.DROP, Skill.FUSE_FLOOR, Skill.CURRENT_FROM_POWER),
                                    12),
                            true,
                            30,
                            false,
                            23),
                    SHELF);

    private final SplittableRandom random = new SplittableRandom(3);

    /** One in two of those who can make a common slip makes it; one in twenty any other. */
    private HandIn handIn(final int learner, final Set<String> common) {
        HandIn handIn = HandIn.begun(SHEET.mark(), learner, "=Wren" + learner, NOW);
        for (int problem = 1; problem <= SHEET.problems(); problem++) {
            final Exercise exercise = SHEET.exercise(learner, problem);
            final List<String> typed = new ArrayList<>();
            Asked.of(exercise).forEach(asked -> typed.add(asked.right()));
            if (exercise instanceof Problem each) {
                slip(each, common).ifPresent(figure -> typed.set(typed.size() - 1, figure));
            }
            handIn = handIn.with(new Reply(problem, typed, learner == problem, NOW));
        }
        return handIn;
    }

    private Optional<String> slip(final Problem problem, final Set<String> common) {
        final List<Outcome> slips =
                SlipFigures.of(problem.worked(), problem.asked()).stream()
                        .filter(it -> Double.isFinite(it.value()))
                        .toList();
        final Optional<Outcome> known =
                slips.stream().filter(it -> common.contains(it.ids().get(0))).findFirst();
        final Optional<Outcome> made =
                random.nextInt(2) == 0
                        ? known
                        : Optional.of(slips.get(random.nextInt(slips.size())))
                                .filter(it -> random.nextInt(10) == 0);
        return made.map(it -> FigureText.of(it.value(), problem.asked().quantity().dimension(), 4));
    }

    private List<HandIn> group(final Set<String> common) {
        final List<HandIn> group = new ArrayList<>();
        for (int learner = 1; learner <= 30; learner++) {
            group.add(handIn(learner, common));
        }
        return group;
    }

    @Test
    void theTwoSlipsCommonInTheGroupAreNamedFirst() {
        final Summary summary = Summary.of(SHEET, group(COMMON));

        assertThat(summary.slips().subList(0, 2))
                .extracting(SlipSeen::id)
                .containsExactlyInAnyOrderElementsOf(COMMON);
        assertThat(summary.slips().get(0).learners()).hasSizeGreaterThan(10);
    }

    @Test
    void whoWantsHelpIsNamedWithTheProblem() {
        final Summary summary = Summary.of(SHEET, group(COMMON));

        assertThat(summary.help()).hasSize(12);
        assertThat(summary.help().get(4))
                .isEqualTo(
                        new HelpWanted(
                                5, SHEET.templates().get(4).skill().words(), List.of("5 =Wren5")));
    }

    @Test
    void whatWasNotAnsweredIsOpenAndNotWrong() {
        final Summary summary = Summary.of(SHEET, List.of(HandIn.begun(SHEET.mark(), 1, "", NOW)));

        assertThat(summary.problems()).allSatisfy(it -> assertThat(it.wrong()).isZero());
        assertThat(summary.problems().get(0).open()).isPositive();
    }

    @Test
    void theSheetForNextWeekIsOfWhatWasMissed() {
        final Summary summary = Summary.of(SHEET, group(Set.of("margin-left-out")));
        final Sheet next = Sheet.of(summary.nextWeek(99), SHELF);

        assertThat(next.problems()).isEqualTo(12);
        assertThat(next.templates()).extracting(it -> it.skill()).contains(Skill.FUSE_FLOOR);
        assertThat(next.mark()).isNotEqualTo(SHEET.mark());
    }

    @Test
    void noCellOfTheCsvIsWorkedAsAFormula() {
        final HandIn hostile =
                new HandIn(SHEET.mark(), 1, "@SUM(\"A1\")", NOW, handIn(1, COMMON).replies());
        final String csv = SummaryCsv.text(Summary.of(SHEET, List.of(hostile)));

        assertThat(csv).startsWith("\uFEFF\"what\",").contains("1 @SUM(\"\"A1\"\")");
        assertThat(csv.lines().flatMap(line -> List.of(line.split("\",\"")).stream()))
                .noneMatch(cell -> cell.matches("\"?[=+@-].*"));
    }

    @Test
    void equalSummariesGiveEqualBytes() {
        final Summary summary = Summary.of(SHEET, List.of(handIn(1, COMMON)));
        assertThat(SummaryPages.pdf(summary, PaperSize.A4))
                .isEqualTo(SummaryPages.pdf(summary, PaperSize.A4));
    }
}
