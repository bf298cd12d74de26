package wireworthy.evening.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.evening.Asked;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.CodeNames;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.paper.PaperSize;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;
import wireworthy.working.Telling;

/** What a leader takes to the evening on paper. */
class SheetPagesTest {
    private static final Shelf SHELF = Shelf.builtIn();

    private static Sheet sheet(final Pick pick, final boolean ownNumbers) {
        return Sheet.of(new SheetPlan(pick, ownNumbers, 3, false, 17), SHELF);
    }

    private static SheetPages pages(final Sheet sheet) {
        return new SheetPages(sheet, CodeNames.read("Wren, Swift, Merlin"), PaperSize.A4);
    }

    private static String text(final byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @ParameterizedTest
    @EnumSource
    void everySkillIsPrintedWithNothingMissing(final PaperSize size) throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(EnumSet.allOf(Skill.class), 26), true);
        final SheetPages pages = new SheetPages(sheet, CodeNames.numbers(2), size);
        final Path folder = Files.createDirectories(Path.of("target", "pages"));
        Files.write(folder.resolve("sheets-" + size + ".pdf"), pages.sheets());
        Files.write(folder.resolve("key-" + size + ".pdf"), pages.key());
        Files.write(folder.resolve("slip-finder-" + size + ".pdf"), pages.slipFinder());

        final String copies = text(pages.sheets());
        final String key = text(pages.key());
        for (int learner = 1; learner <= 2; learner++) {
            for (final Exercise each : sheet.exercises(learner)) {
                assertThat(copies).contains(each.ask());
                assertThat(key).contains(Asked.of(each).get(0).right());
            }
        }
    }

    @Test
    void equalSheetsGiveEqualBytes() {
        final Pick pick = Pick.BySkills.of(Set.of(Skill.DROP, Skill.CIRCUIT_IDEAS), 4);
        final SheetPages one = pages(sheet(pick, true));
        final SheetPages other = pages(sheet(pick, true));

        assertThat(one.sheets()).isEqualTo(other.sheets());
        assertThat(one.key()).isEqualTo(other.key());
        assertThat(one.slipFinder()).isEqualTo(other.slipFinder());
    }

    @Test
    void eachCopyBeginsOnAPageOfItsOwnAndCountsItsOwnPages() throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(Set.of(Skill.DROP), 2), true);
        try (PDDocument document = Loader.loadPDF(pages(sheet).sheets())) {
            assertThat(document.getNumberOfPages()).isEqualTo(3);
            final String text = new PDFTextStripper().getText(document);
            assertThat(text.split("1 / 1", -1)).hasSize(4);
            assertThat(text).contains("1 Wren", "2 Swift", "3 Merlin", sheet.mark());
        }
    }

    /** Sheets of circuits with one figure each: the head takes no problem's place. */
    @ParameterizedTest
    @EnumSource
    void threeProblemsShareEachPageTheFirstToo(final PaperSize size) throws IOException {
        final List<String> ids =
                List.of(
                        "power/house-lamp-current",
                        "power/amplifier-current-24",
                        "power/water-pump-power",
                        "parallel-loads/strips-and-fan",
                        "parallel-loads/lamps-and-pump",
                        "units-and-lengths/usb-lamps-in-milliamps");
        final Sheet sheet = sheet(new Pick.ByTemplates(ids), true);
        final byte[] one = new SheetPages(sheet, CodeNames.numbers(1), size).sheets();

        try (PDDocument document = Loader.loadPDF(one)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Skill.class,
            names = {"DROP", "FUSE_FLOOR", "ADDING_LOADS", "ENERGY_AND_RUNTIME"})
    void theSlipFinderHasTheFigureOfEverySlip(final Skill skill) throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(Set.of(skill), 4), true);
        final String finder = text(pages(sheet).slipFinder());

        for (final Exercise each : sheet.exercises(2)) {
            if (each instanceof Problem problem) {
                for (final Outcome slip : SlipFigures.of(problem.worked(), problem.asked())) {
                    if (Double.isFinite(slip.value())) {
                        final String figure =
                                Telling.result(problem.asked().quantity(), slip.value());
                        assertThat(finder).as(slip.ids() + " of " + each.ask()).contains(figure);
                    }
                }
            }
        }
    }

    /** No page of it begins in the middle of figures: their letters would stand overleaf. */
    @ParameterizedTest
    @EnumSource
    void theSlipFinderKeepsFiguresWithWhatTheirLettersStandFor(final PaperSize size)
            throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(EnumSet.allOf(Skill.class), 20), true);
        final byte[] finder = new SheetPages(sheet, CodeNames.numbers(12), size).slipFinder();

        try (PDDocument document = Loader.loadPDF(finder)) {
            for (int page = 2; page <= document.getNumberOfPages(); page++) {
                assertThat(page(document, page))
                        .as("page " + page)
                        .matches("(?s)Problem \\d+( [a-z])?(:|, goes on:) .*");
            }
        }
    }

    /** A letter at the end of a line would stand apart from what it stands for. */
    @Test
    void noLineOfTheSlipFinderEndsWithALetterOfItsOwn() throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(EnumSet.allOf(Skill.class), 26), true);
        final byte[] finder =
                new SheetPages(sheet, CodeNames.numbers(2), PaperSize.A4).slipFinder();

        try (PDDocument document = Loader.loadPDF(finder)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertThat(page(document, page).replace('\u00a0', ' ').lines())
                        .filteredOn(line -> !line.startsWith("Problem "))
                        .noneMatch(line -> line.matches(".*[a-z)] +[a-z]\\d?"));
            }
        }
    }

    /** Whose figures stand at the top of a page, and of which problem, is said there. */
    @ParameterizedTest
    @EnumSource
    void noPageOfTheKeyBeginsWithoutItsProblem(final PaperSize size) throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(EnumSet.allOf(Skill.class), 20), true);
        final byte[] key = new SheetPages(sheet, CodeNames.numbers(12), size).key();

        try (PDDocument document = Loader.loadPDF(key)) {
            for (int page = 2; page <= document.getNumberOfPages(); page++) {
                assertThat(page(document, page)).as("page " + page).startsWith("Problem ");
            }
        }
    }

    /**
     * Where the lines of a problem begin on a page, they end there, and a learner's row follows.
     */
    @ParameterizedTest
    @EnumSource
    void theLinesOfAProblemStandOnOnePageOfTheKeyWithTheFirstRow(final PaperSize size)
            throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(EnumSet.allOf(Skill.class), 20), true);
        final byte[] key = new SheetPages(sheet, CodeNames.numbers(12), size).key();

        try (PDDocument document = Loader.loadPDF(key)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                final String text = page(document, page);
                for (final String opened : text.split("(?=Problem \\d+: )")) {
                    if (opened.matches("(?s)Problem.*\\n1\\) .*")) {
                        assertThat(opened).as("page " + page).containsPattern("learner\\s");
                    }
                }
            }
        }
    }

    private static String page(final PDDocument document, final int page) throws IOException {
        final PDFTextStripper read = new PDFTextStripper();
        read.setSortByPosition(true);
        read.setStartPage(page);
        read.setEndPage(page);
        return read.getText(document).strip();
    }

    static List<CodeNames> classes() {
        return List.of(
                CodeNames.read("Fuse Box, Wren, Swift, Otter, Lamp, Heron, Merlin"),
                CodeNames.numbers(40));
    }

    /** A learner and the letters of the answer are read in one go. */
    @ParameterizedTest
    @MethodSource("classes")
    void lettersInTheirOrderStandOnOneLine(final CodeNames names) throws IOException {
        final List<String> orders =
                SHELF.templates(false).stream()
                        .map(Template::fullId)
                        .filter(id -> id.equals("ways-of-working/size-a-new-circuit"))
                        .limit(1)
                        .toList();
        final Sheet sheet = sheet(new Pick.ByTemplates(orders), true);
        try (PDDocument document =
                Loader.loadPDF(new SheetPages(sheet, names, PaperSize.A4).key())) {
            final String text = page(document, 1).replace('\u00a0', ' ');
            for (int learner = 1; learner <= names.size(); learner++) {
                assertThat(text)
                        .contains(
                                names.label(learner)
                                        + ": "
                                        + Asked.of(sheet.exercise(learner, 1)).get(0).right());
            }
        }
    }

    /** Figures such as 0.0914 A leave room for fewer columns than figures such as 12 A. */
    @Test
    void longFiguresStandInFewerColumns() {
        assertThat(SlipPart.beside(List.of(new SlipColumn("", List.of("12 A"), 12))))
                .isGreaterThan(
                        SlipPart.beside(
                                List.of(new SlipColumn("", List.of("12 A", "0.00914 mm²"), 12))));
    }

    @Test
    void figuresThatAreComparedStandInOneUnit() {
        final List<String> ids =
                SHELF.templates(false).stream()
                        .map(Template::fullId)
                        .filter(id -> id.contains("resistance") || id.contains("milliohm"))
                        .toList();
        final Sheet sheet = sheet(new Pick.ByTemplates(ids), true);
        for (int problem = 1; problem <= sheet.problems(); problem++) {
            final int each = problem;
            final List<Problem> all =
                    IntStream.rangeClosed(1, 12)
                            .mapToObj(learner -> sheet.exercise(learner, each))
                            .filter(Problem.class::isInstance)
                            .map(Problem.class::cast)
                            .toList();
            if (!all.isEmpty()) {
                assertThat(units(all)).as(ids.get(each - 1)).hasSize(1);
            }
        }
    }

    private static Set<String> units(final List<Problem> all) {
        final OneUnit written = new OneUnit(all, 0);
        return Stream.concat(
                        IntStream.range(0, all.size()).mapToObj(written::right),
                        SlipColumn.of(all, 0).stream().flatMap(it -> it.figures().stream()))
                .filter(figure -> figure.contains(" "))
                .map(figure -> figure.substring(figure.indexOf(' ')))
                .collect(Collectors.toSet());
    }

    @Test
    void whatASheetForNextWeekWasChosenForStandsOnEachPaper() throws IOException {
        final Sheet sheet = sheet(Pick.BySkills.of(Set.of(Skill.DROP), 3), true);
        final SheetPages chosen =
                new SheetPages(
                        sheet,
                        CodeNames.numbers(1),
                        PaperSize.A4,
                        new ChosenFor("Most went wrong on: drop."));
        final String problems = "Chosen for: drop (problems 1, 2, 3).";

        assertThat(text(chosen.sheets())).contains(problems).doesNotContain("Most went wrong");
        assertThat(text(chosen.key())).contains("Most went wrong on: drop. " + problems);
        assertThat(text(chosen.slipFinder())).contains("Most went wrong on: drop. " + problems);
        assertThat(text(pages(sheet).sheets())).doesNotContain("Chosen for");
    }

    @Test
    void ofTwoMainsVoltagesItIsSaidWhich() {
        final Sheet sheet = sheet(Pick.BySkills.of(Set.of(Skill.CURRENT_FROM_POWER), 12), true);
        final List<String> words =
                sheet.exercises(1).stream()
                        .filter(Problem.class::isInstance)
                        .flatMap(each -> SlipColumn.of(List.of((Problem) each), 0).stream())
                        .map(SlipColumn::words)
                        .filter(each -> each.contains("the mains voltage"))
                        .toList();
        assertThat(words)
                .anyMatch(each -> each.contains("battery's (230 V)"))
                .anyMatch(each -> each.contains("battery's (120 V)"))
                .allMatch(each -> each.matches(".*battery's \\((230|120) V\\).*"));
    }

    @Test
    void twoSlipsOfOneFigureStandInOneColumn() {
        final Sheet sheet =
                sheet(new Pick.ByTemplates(List.of("current/step-strip-current")), true);
        final List<Problem> all =
                List.of((Problem) sheet.exercise(1, 1), (Problem) sheet.exercise(2, 1));

        assertThat(SlipColumn.of(all, 0))
                .extracting(SlipColumn::figures)
                .doesNotHaveDuplicates()
                .allSatisfy(figures -> assertThat(figures).hasSize(2));
    }
}
