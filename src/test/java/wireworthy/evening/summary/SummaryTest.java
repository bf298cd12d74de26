package wireworthy.evening.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.Reply;
import wireworthy.paper.PaperSize;
import wireworthy.rules.Skill;

/** A class of 30, made up: what they stumble over is said first. */
class SummaryTest {
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

    private static List<HandIn> group(final Set<String> common, final long seed) {
        return new MadeUpClass(SHEET, common, seed).handIns();
    }

    /** Whatever pair of slips is common, and whoever makes them. */
    @ParameterizedTest
    @CsvSource({
        "one-way-length, margin-left-out",
        "margin-left-out, one-way-length",
        "one-way-length, volts-over-power",
        "margin-left-out, power-times-volts",
        "area-multiplied, margin-left-out"
    })
    void theTwoSlipsCommonInTheGroupAreNamedFirst(final String one, final String other) {
        final Set<String> common = Set.of(one, other);
        for (int seed = 1; seed <= 6; seed++) {
            final Summary summary = Summary.of(SHEET, group(common, seed));

            assertThat(summary.slips().subList(0, 2))
                    .as("seed " + seed)
                    .extracting(SlipSeen::id)
                    .containsExactlyInAnyOrderElementsOf(common);
            assertThat(summary.slips().get(1).learners()).hasSizeGreaterThan(10);
            assertThat(summary.slips().get(1).weight())
                    .isGreaterThan(2 * summary.slips().get(2).weight());
        }
    }

    @Test
    void whoWantsHelpIsNamedWithTheProblem() {
        final Summary summary = Summary.of(SHEET, group(COMMON, 3));

        assertThat(summary.help()).hasSize(12);
        assertThat(summary.help().get(4))
                .isEqualTo(
                        new HelpWanted(
                                5, SHEET.templates().get(4).skill().words(), List.of("5 =Wren5")));
    }

    @Test
    void whatWasNotAnsweredIsOpenAndNotWrong() {
        final Summary summary =
                Summary.of(SHEET, List.of(HandIn.begun(SHEET.mark(), 1, "", MadeUpClass.NOW)));

        assertThat(summary.problems()).allSatisfy(it -> assertThat(it.wrong()).isZero());
        assertThat(summary.problems().get(0).open()).isPositive();
    }

    @Test
    void whatNoKnownSlipGivesIsNamedByProblemFigureAndLearner() throws IOException {
        final HandIn right = new MadeUpClass(SHEET, Set.of(), 3).handIn(2);
        final HandIn odd =
                right.with(
                        new Reply(
                                1,
                                right.reply(1).orElseThrow().typed().stream()
                                        .map(any -> "0.0123457")
                                        .toList(),
                                false,
                                MadeUpClass.NOW));
        final Summary summary = Summary.of(SHEET, List.of(odd));

        assertThat(summary.unexplained())
                .filteredOn(each -> each.problem() == 1)
                .contains(
                        new Handed(
                                1,
                                SHEET.templates().get(0).skill().words(),
                                "0.0123457",
                                "2 =Wren2"));
        assertThat(summary.missing()).isEqualTo(29);
        assertThat(SummaryCsv.text(summary))
                .contains("\"wrong, no known slip\",\"1 ", "0.0123457", "\"29\"");
        try (PDDocument document = Loader.loadPDF(SummaryPages.pdf(summary, PaperSize.A4))) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " "))
                    .contains("Wrong, no known slip", "0.0123457 · 2 =Wren2", "nothing: 29.");
        }
    }

    /** What a learner wrote in place of a figure was said to be kept: it is found here. */
    @Test
    void whatCannotBeReadIsANoteWithProblemAndLearner() throws IOException {
        final HandIn right = new MadeUpClass(SHEET, Set.of(), 3).handIn(2);
        final int answers = right.reply(1).orElseThrow().typed().size();
        final List<String> typed = Collections.nCopies(answers, "dont know");
        final Summary summary =
                Summary.of(SHEET, List.of(right.with(new Reply(1, typed, false, MadeUpClass.NOW))));

        final String skill = SHEET.templates().get(0).skill().words();
        assertThat(summary.notes())
                .hasSize(answers)
                .contains(new Handed(1, skill, "dont know", "2 =Wren2"));
        assertThat(summary.problems().get(0).open()).isEqualTo(answers);
        assertThat(SummaryCsv.text(summary))
                .contains("\"a note, open\",\"1 " + skill + ": dont know\"");
        try (PDDocument document = Loader.loadPDF(SummaryPages.pdf(summary, PaperSize.A4))) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " "))
                    .contains("dont know · 2 =Wren2");
        }
    }

    /** A problem of a whole circuit asks for several skills; its row is in no row of the skills. */
    @Test
    void problemsAndSkillsComeToTheSameAndItIsSaidWhyTheirRowsDoNot() throws IOException {
        final Sheet whole =
                Sheet.of(
                        new SheetPlan(
                                Pick.BySkills.of(Set.of(Skill.WHICH_LIMIT_GOVERNS, Skill.DROP), 6),
                                true,
                                5,
                                false,
                                23),
                        SHELF);
        final Summary summary = Summary.of(whole, new MadeUpClass(whole, COMMON, 3).handIns());

        assertThat(Missed.sum("", summary.problems())).isEqualTo(Missed.sum("", summary.skills()));
        try (PDDocument document = Loader.loadPDF(SummaryPages.pdf(summary, PaperSize.A4))) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " "))
                    .contains("a row here need not be like a row by problem")
                    .containsPattern("all answers \\d+ \\d+ \\d+ .*all answers \\d+ \\d+ \\d+");
        }
    }

    @Test
    void noCellOfTheCsvIsWorkedAsAFormula() {
        final HandIn hostile =
                new HandIn(
                        SHEET.mark(),
                        1,
                        "@SUM(\"A1\")",
                        MadeUpClass.NOW,
                        new MadeUpClass(SHEET, COMMON, 3).handIn(1).replies());
        final String csv = SummaryCsv.text(Summary.of(SHEET, List.of(hostile)));

        assertThat(csv).startsWith("\uFEFF\"what\",").contains("1 @SUM(\"\"A1\"\")");
        assertThat(csv.lines().flatMap(line -> List.of(line.split("\",\"")).stream()))
                .noneMatch(cell -> cell.matches("\"?[=+@-].*"));
    }

    @Test
    void equalSummariesGiveEqualBytes() {
        final Summary summary =
                Summary.of(SHEET, List.of(new MadeUpClass(SHEET, COMMON, 3).handIn(1)));
        assertThat(SummaryPages.pdf(summary, PaperSize.A4))
                .isEqualTo(SummaryPages.pdf(summary, PaperSize.A4));
    }

    @ParameterizedTest
    @EnumSource
    void onPaperNothingOfItIsMissing(final PaperSize size) throws IOException {
        final Summary summary = Summary.of(SHEET, group(COMMON, 3));
        final byte[] pdf = SummaryPages.pdf(summary, size);
        Files.write(
                Files.createDirectories(Path.of("target", "pages"))
                        .resolve("summary-" + size + ".pdf"),
                pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            final String text =
                    new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
            assertThat(text).contains("29 =Wren29", SHEET.mark());
            assertThat(summary.slips()).allSatisfy(each -> assertThat(text).contains(each.words()));
            assertThat(summary.problems())
                    .allSatisfy(each -> assertThat(text).contains(each.label()));
        }
    }
}
