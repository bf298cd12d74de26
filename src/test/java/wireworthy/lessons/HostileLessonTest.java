package wireworthy.lessons;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.practice.ContentFiles;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;

/** A broken part is named with its line; everything else is still read. */
class HostileLessonTest {
    private static final String HEAD =
            """
            ---
            id: own
            title: Own lesson
            skills: [drop]
            reviewed: false
            ---
            """;

    @TempDir private Path folder;

    private Lessons lessons() {
        return Lessons.of(new Solver(), ContentFiles.in(folder, ".md"));
    }

    private Lesson own(final String file) throws IOException {
        Files.writeString(folder.resolve("10-own.md"), file);
        return lessons().lesson("own").orElseThrow();
    }

    private static String text(final Lesson lesson) {
        return lesson.screens().stream()
                .flatMap(screen -> screen.blocks().stream())
                .filter(Block.Prose.class::isInstance)
                .map(block -> PlainText.of(((Block.Prose) block).markdown()))
                .collect(Collectors.joining("\n"));
    }

    private void assertOnlyThatIsBroken(final String part, final int line, final String message)
            throws IOException {
        final Lesson lesson = own(HEAD + "Text before.\n\n" + part + "\n\nText after.\n");
        assertThat(lesson.problems())
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.file()).isEqualTo("10-own.md");
                            assertThat(problem.line()).isEqualTo(line);
                            assertThat(problem.message()).contains(message);
                            assertThat(problem.remedy()).isNotBlank();
                        });
        assertThat(text(lesson)).contains("Text before.").contains("Text after.");
        assertThat(lesson.screens().get(0).blocks())
                .filteredOn(Block.Broken.class::isInstance)
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "<script>alert(1)</script>,          HTML",
        "some <b>bold</b> text,              HTML",
        "![a picture](picture.png),          Images",
        "[away](https://example.org),        leads to no lesson",
        "<https://example.org>,              leads to no lesson",
        "[own](lesson:nowhere),              leads to no lesson",
        "[own](table:nowhere),               leads to no lesson",
        "[own](word:nowhere),                leads to no lesson",
        "[a file](file:///etc/hosts),        leads to no lesson",
        "[up](../../outside.md),             leads to no lesson",
        "[up](lesson:../outside),            leads to no lesson",
        "[code](javascript:alert%281%29),    leads to no lesson",
        "<iframe src='file:///etc/hosts'>,   HTML",
        "![far](https://example.org/x.png),  Images"
    })
    void textThatLeadsOutOrCannotBeDrawn(final String part, final String message)
            throws IOException {
        assertOnlyThatIsBroken(part, 9, message);
    }

    @Test
    void theLineOfABadLinkIsThatOfTheLinkNotOfItsParagraph() throws IOException {
        assertOnlyThatIsBroken("One line\nand [away](https://example.org).", 10, "leads");
    }

    @Test
    void aFigureNobodyKnows() throws IOException {
        assertOnlyThatIsBroken(
                "```figure\nid: perpetual-motion\ntry: Why?\n```", 10, "perpetual-motion");
    }

    @Test
    void aFigureWithoutAnId() throws IOException {
        assertOnlyThatIsBroken("```figure\ntry: Why?\n```", 10, "\"id\" is missing");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{from: 6 W, to: 240 W, step: 2 W}               | \"start\" is missing",
                "{from: 6 W, to: 2 W, step: 1 W, start: 5 W}     | does not hold its start",
                "{from: 6 W, to: 60 W, step: 1 W, start: 90 W}   | does not hold its start",
                "{from: 6 W, to: 60 W, step: 0 W, start: 9 W}    | more than zero",
                "{from: 6 W, to: 6 kW, step: 1 mW, start: 9 W}   | too many steps",
                "{from: 6 W, to: 6 V, step: 1 W, start: 9 W}     | volts",
                "{from: 6 W, to: 9 W, step: 1 W, begin: 9 W}     | \"begin\" is not known here",
                "{of: [6 W, 9 W], start: 8 W}                    | not among its values",
                "[6 W, 9 W]                                      | has entries of its own",
                "-5 W                                            | more than zero"
            })
    void aHandleThatCannotMove(final String power, final String message) throws IOException {
        assertOnlyThatIsBroken(
                "```figure\nid: power-current-voltage\nsupply-voltage: 12 V\ntry: Why?\n"
                        + "load-power: %s\n```".formatted(power),
                13,
                message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{from: 1, to: 5, step: 1, start: 2}       | more of \"in-series\" than can be drawn",
                "7                                         | more of \"in-series\" than can be drawn",
                "{of: [1, 2, 9], start: 2}                 | more of \"in-series\" than can be drawn",
                "1.5                                       | whole"
            })
    void moreBatteriesThanCanBeDrawn(final String series, final String message) throws IOException {
        assertOnlyThatIsBroken(
                "```figure\nid: bank-builder\nbattery-voltage: 12 V\nbattery-capacity: 90 Ah\n"
                        + "in-parallel: 2\nusable-share: 50 %\nbattery-resistance: 5 mohm\n"
                        + "try: Why?\nin-series: %s\n```".formatted(series),
                17,
                message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boat-cable    | 0.75 mm2                                        | section",
                "thin-wall     | {of: [2.5 mm2, 10 mm2], start: 2.5 mm2}         | section",
                "thin-wall     | {from: 1 mm2, to: 9 mm2, step: 1 mm2, start: 2 mm2} | section",
                "boat-cable    | {of: [20 AWG, 12 AWG], start: 12 AWG}           | section"
            })
    void aCableThatIsNotInTheTableOfItsFigure(
            final String table, final String section, final String option) throws IOException {
        assertOnlyThatIsBroken(
                "```figure\nid: derated-ampacity\nsection: %s\ncable-table: %s\ntry: Why?\n"
                                .formatted(section, table)
                        + "ambient-temperature: 30 degC\ntwo-core-cables: 1\nengine-space: no\n"
                        + "in-thermal-insulation: no\nfuse-series: blade\n```",
                11,
                "\"%s\" holds a cable that is not in the cable table %s".formatted(option, table));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "thin-wall  | 75 degC  | thin-wall has no insulation rated that low",
                "boat-cable | 200 degC | more of \"insulation-temperature\" than can be drawn"
            })
    void insulationThatTheFigureCannotWorkWith(
            final String table, final String insulation, final String message) throws IOException {
        assertOnlyThatIsBroken(
                "```figure\nid: fuse-or-cable\nfuse: 15 A\nfuse-series: blade\nsection: 2.5 mm2\n"
                        + "insulation-temperature: %s\ncable-table: %s\n"
                                .formatted(insulation, table)
                        + "supply-voltage: 12 V\ninternal-resistance: 10 mohm\n"
                        + "one-way-length: 5 m\nresistivity: 0.0172 ohm mm2/m\ntry: Why?\n```",
                14,
                message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{name: lamp, power: 9 W, on: yes}                      | \"hours\" is missing",
                "{name: lamp, power: 9 W, hours: 25 h, on: yes}         | A day has 24 hours",
                "{name: lamp, power: 9 W, share-of-time: 140 %, on: no} | 140 %",
                "{name: lamp, power: 0 W, hours: 5 h, on: yes}          | more than zero"
            })
    void aLoadWithoutItsTimeInADay(final String load, final String message) throws IOException {
        assertOnlyThatIsBroken(day(load, "0 h"), 12, message);
    }

    @Test
    void aLoadWithATimeWhereTimeIsNotAsked() throws IOException {
        assertOnlyThatIsBroken(
                "```figure\nid: lamps-on-a-feed\nsupply-voltage: 12 V\ntry: Why?\nloads:\n"
                        + "  - {name: lamp, power: 9 W, hours: 2 h, on: yes}\n```",
                14,
                "\"hours\" is not known here");
    }

    @ParameterizedTest
    @CsvSource({"0 h, 0", "0 min, 0", "3 h, 10800"})
    void aDayMayHaveNoSun(final String sun, final double seconds) throws IOException {
        final Lesson lesson = own(HEAD + day("{name: lamp, power: 9 W, hours: 2 h, on: yes}", sun));
        assertThat(lesson.problems()).isEmpty();
        final Block.LiveFigure block = (Block.LiveFigure) lesson.screens().get(0).blocks().get(0);
        assertThat(block.figure().handle(FigureOption.SUN_HOURS))
                .isEqualTo(new Handle.Fixed(Quantity.SUN_HOURS, seconds));
    }

    private static String day(final String load, final String sun) {
        return "```figure\nid: days-energy\nloads:\n  - "
                + load
                + "\nsun-hours: "
                + sun
                + "\nsupply-voltage: 12 V\nbank-capacity: 200 Ah\nusable-share: 50 %"
                + "\narray-power: 200 W\narray-efficiency: 70 %\ncharge-current: 30 A"
                + "\ncharge-time: 0 h\ncharge-efficiency: 80 %\ntry: Why?\n```";
    }

    @Test
    void anOptionTheFigureDoesNotHave() throws IOException {
        assertOnlyThatIsBroken(
                "```figure\nid: power-current-voltage\nload-power: 5 W\nsupply-voltage: 12 V\n"
                        + "try: Why?\ncolour: red\n```",
                14,
                "\"colour\" is not known here");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "id: [",
                "id: *anchor",
                "id: &a b",
                "id: a\nid: b",
                "a: {b: {c: {d: {e: {}}}}}"
            })
    void yamlThatIsBrokenOrTooClever(final String yaml) throws IOException {
        final Lesson lesson =
                own(HEAD + "Text before.\n\n```figure\n" + yaml + "\n```\n\nAfter.\n");
        assertThat(lesson.problems()).singleElement().satisfies(HostileLessonTest::inTheBlock);
        assertThat(text(lesson)).contains("After.");
    }

    /** A few lines that name each other over and over, and a key that takes in all others. */
    @ParameterizedTest
    @ValueSource(strings = {"a: &a [x, x, x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]", "<<: *all"})
    void yamlThatUnfoldsIntoMuchMore(final String yaml) throws IOException {
        final Lesson figure = own(HEAD + "Before.\n\n```figure\n" + yaml + "\n```\n\nAfter.\n");
        assertThat(figure.problems()).singleElement().satisfies(HostileLessonTest::near);
        assertThat(text(figure)).contains("Before.", "After.");
        final Lesson head = own("---\nid: own\n" + yaml + "\n---\nThe text.\n");
        assertThat(head.problems()).isNotEmpty();
        assertThat(text(head)).contains("The text.");
    }

    private static void near(final LessonProblem problem) {
        assertThat(problem.line()).isBetween(10, 13);
    }

    @Test
    void aLinkOutOfTheFolderIsNamedAndNotFollowed(@TempDir final Path elsewhere)
            throws IOException {
        final Path secret = Files.writeString(elsewhere.resolve("secret.md"), HEAD + "Secret.\n");
        Files.createSymbolicLink(folder.resolve("09-link.md"), secret);
        Files.writeString(folder.resolve("10-own.md"), HEAD + "Text.\n");
        final Lessons lessons = lessons();
        assertThat(text(lessons.lesson("own").orElseThrow())).startsWith("Text.");
        assertThat(lessons.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.text()).contains("09-link.md", "no file"));
    }

    @Test
    void aFolderWithTheNameOfALessonIsNamed() throws IOException {
        Files.createDirectory(folder.resolve("09-folder.md"));
        assertThat(lessons().problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.file()).isEqualTo("09-folder.md"));
    }

    private static void inTheBlock(final LessonProblem problem) {
        assertThat(problem.line()).isBetween(10, 11);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"given\": {                                              | can't be read",
                "{\"find\": \"drop\", \"find\": \"drop\", \"given\": {}}    | can't be read",
                "{\"given\": {\"load-power\": \"5 W\"}, \"find\": \"drop\"} | can't be worked",
                "{\"given\": {\"load-power\": \"5 m\"}, \"find\": \"drop\"} | can't be worked",
                "[[[[[[[[1]]]]]]]]                                          | too deeply",
                "[]                                                         | can't be worked",
                "{} {}                                                      | can't be read"
            })
    void aQuestionThatCannotBeWorked(final String json, final String message) throws IOException {
        assertOnlyThatIsBroken("```worked\n" + json + "\n```", 10, message);
    }

    @Test
    void questionsWithoutTemplates() throws IOException {
        assertOnlyThatIsBroken(
                "```questions\nbank: voltage-drop\ntemplates: []\n```",
                11,
                "one to five questions");
    }

    @Test
    void aCautionWithHtmlIsNamedAtItsOwnLine() throws IOException {
        assertOnlyThatIsBroken("```caution\nIsolate.\n\n<b>now</b>\n```", 12, "HTML");
    }

    @Test
    void aBlockNobodyKnows() throws IOException {
        assertOnlyThatIsBroken("```java\nint i;\n```", 9, "No block is called \"java\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"> ", "- "})
    void deepNesting(final String opening) throws IOException {
        assertOnlyThatIsBroken(opening.repeat(5000) + "deep", 9, "nested too deeply");
    }

    @Test
    void deepEmphasisAndBracketsEndSoonAndHarmNothing() throws IOException {
        final Lesson lesson =
                own(
                        HEAD
                                + "*a _b ".repeat(5000)
                                + "\n\n"
                                + "[".repeat(20_000)
                                + "\n\nText after.\n");
        assertThat(text(lesson)).contains("Text after.");
    }

    @Test
    void dashesRightUnderAParagraphEndTheScreen() throws IOException {
        assertThat(own(HEAD + "First.\n---\nSecond.\n").screens())
                .extracting(Lesson.Screen::line)
                .containsExactly(7, 9);
    }

    @Test
    void aScreenWithTooManyWordsIsShownAndNamed() throws IOException {
        final Lesson lesson = own(HEAD + "First.\n\n---\n\n" + "word ".repeat(251) + "\n");
        assertThat(lesson.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.line()).isEqualTo(11));
        assertThat(text(lesson)).contains("word word");
    }

    @Test
    void brokenFrontMatterLeavesTheLessonReadable() throws IOException {
        final Lesson lesson =
                own(
                        """
                        ---
                        title: {
                        ---
                        The text.
                        """);
        assertThat(lesson.problems()).singleElement().satisfies(problem -> inHead(problem, 2));
        assertThat(lesson.heading().title()).isEqualTo("10-own");
        assertThat(text(lesson)).startsWith("The text.");
    }

    private static void inHead(final LessonProblem problem, final int line) {
        assertThat(problem.line()).isEqualTo(line);
        assertThat(problem.message()).contains("not YAML");
    }

    @Test
    void eachBrokenKeyOfTheFrontMatterIsNamedAlone() throws IOException {
        final Lesson lesson =
                own(
                        """
                        ---
                        id: own
                        title: Own lesson
                        skills: [drop, juggling]
                        builds-on: [nothing]
                        reviewed: perhaps
                        author: me
                        ---
                        The text.
                        """);
        assertThat(lesson.problems())
                .extracting(LessonProblem::line, LessonProblem::message)
                .containsExactlyInAnyOrder(
                        tuple(4, "No skill is called \"juggling\""),
                        tuple(1, "There is no lesson \"nothing\" to build on"),
                        tuple(6, "\"reviewed\" is true or false"),
                        tuple(7, "\"author\" is not known here"));
        assertThat(lesson.heading().title()).isEqualTo("Own lesson");
        assertThat(text(lesson)).startsWith("The text.");
    }

    @Test
    void aLessonWithoutFrontMatterIsReadUnderItsFileName() throws IOException {
        final Lesson lesson = own("Only text.\n");
        assertThat(lesson.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("no front matter"));
        assertThat(text(lesson)).startsWith("Only text.");
    }

    @Test
    void aFileOfTenMegabytesIsNamedAndTheOthersAreRead() throws IOException {
        Files.write(folder.resolve("09-huge.md"), new byte[10 << 20]);
        Files.writeString(folder.resolve("10-own.md"), HEAD + "Text.\n");
        final Lessons lessons = lessons();
        assertThat(lessons.contents()).extracting(LessonHeading::id).containsExactly("own");
        assertThat(lessons.problems())
                .extracting(LessonProblem::text)
                .containsExactly(
                        "09-huge.md, line 1: the file is larger than 2 MB. Split it into several"
                                + " files.");
    }

    @Test
    void aFileOfMoreThanOneMegabyteIsNamed() throws IOException {
        Files.writeString(folder.resolve("10-own.md"), HEAD + "word ".repeat(300_000));
        assertThat(lessons().problems())
                .extracting(LessonProblem::message)
                .containsExactly("The file is larger than 1 MB");
    }

    @Test
    void aFileThatIsNotTextIsNamed() throws IOException {
        Files.write(folder.resolve("10-own.md"), new byte[] {(byte) 0xC3, 0x28});
        assertThat(lessons().problems())
                .extracting(LessonProblem::message)
                .containsExactly("the file is not UTF-8 text");
    }

    @Test
    void twoLessonsOfOneIdAreNotMixedUp() throws IOException {
        Files.writeString(folder.resolve("10-own.md"), HEAD + "First.\n");
        Files.writeString(folder.resolve("11-own.md"), HEAD + "Second.\n");
        final Lessons lessons = lessons();
        assertThat(text(lessons.lesson("own").orElseThrow())).startsWith("First.");
        assertThat(lessons.problems())
                .extracting(LessonProblem::file, LessonProblem::message)
                .containsExactly(tuple("11-own.md", "The id own belongs to 10-own.md"));
    }

    @Test
    void aFolderThatIsNotThereIsAProblemAndTheBuiltInLessonsStay() {
        final Lessons lessons = Lessons.read(new Solver(), Optional.of(folder.resolve("missing")));
        assertThat(lessons.contents()).hasSizeGreaterThanOrEqualTo(5);
        assertThat(lessons.problems())
                .extracting(LessonProblem::file)
                .isEqualTo(List.of(folder.resolve("missing").toString()));
    }

    @Test
    void windowsLineEndsAndAByteOrderMarkAreRead() throws IOException {
        final String file = "\uFEFF" + (HEAD + "Text.\n\n![x](y)\n").replace("\n", "\r\n");
        Files.write(folder.resolve("10-own.md"), file.getBytes(StandardCharsets.UTF_8));
        assertThat(lessons().problems()).extracting(LessonProblem::line).isEqualTo(List.of(9));
    }
}
