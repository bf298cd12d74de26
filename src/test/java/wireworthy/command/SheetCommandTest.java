package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.SheetFile;

class SheetCommandTest {
    @TempDir Path folder;

    private final StringWriter said = new StringWriter();

    private int sheet(final String arguments) {
        final CommandLine line = WireworthyCommand.line(any -> {});
        line.setOut(new PrintWriter(said));
        line.setErr(new PrintWriter(said));
        final String all = "sheet --data-dir " + folder + " --out " + folder + "/papers ";
        return line.execute((all + arguments).split(" "));
    }

    private List<Path> papers() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("papers"))) {
            return files.sorted().toList();
        }
    }

    @Test
    void theMarkThatIsSaidBringsTheSamePapersBack() throws IOException {
        assertThat(sheet("--skills drop,fuse-choice --problems 2 --copies 2 --own-numbers"))
                .isZero();
        final List<Path> first = papers();
        assertThat(first).hasSize(3);
        final byte[] key = Files.readAllBytes(first.get(0));
        for (final Path file : first) {
            Files.delete(file);
        }

        final String mark = said.toString().lines().findFirst().orElseThrow().substring(11);
        assertThat(sheet("--mark " + mark)).isZero();
        assertThat(papers()).isEqualTo(first);
        assertThat(Files.readAllBytes(first.get(0))).isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--mark 0000-0000-0000-0000-0001 | Compare it with the printed one",
                "--skills wiring                 | No skill is called \"wiring\". Choose of",
                "--difficulty brutal             | Choose of easy, middling, hard.",
                "--volts 230                     | Choose of 12, 24, 48.",
                "--wire inch                     | Choose of mm2, awg.",
                "--problems 0                    | Take 1 to 32.",
                "--copies 65                     | Take 1 to 64.",
                "--seed -1                       | Take 0 to 65535.",
                "--templates nothing/at-all      | such as voltage-drop/aisle-strips-drop.",
                "--laptops soon                  | Choose of now, at-the-end, not-at-all.",
                "--names nobody.csv              | nobody.csv can't be read. Check that it is there.",
            })
    void whatCantBeMadeIsSaidWithTheWayOut(final String arguments, final String says) {
        assertThat(sheet(arguments)).isEqualTo(2);
        assertThat(said.toString()).contains(says);
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    /** A page of options after it would push the reason out of sight. */
    @Test
    void whatCantBeMadeOfGoodOptionsIsSaidAlone() {
        assertThat(sheet("--skills section-for-a-drop-limit --volts 24 --wire awg")).isEqualTo(2);
        assertThat(said.toString()).contains("Leave this skill out").doesNotContain("--copies");
    }

    @Test
    void codeNamesStandOnTheCopiesAndDecideHowMany() throws IOException {
        final Path names = folder.resolve("names.csv");
        Files.writeString(names, "Code name\r\nWren\r\n\"Swift\"\r\nMerlin\r\n");

        assertThat(sheet("--skills drop --problems 1 --names " + names)).isZero();
        assertThat(text(papers().get(1))).contains("1 Wren", "2 Swift", "3 Merlin");
    }

    @ParameterizedTest
    @CsvSource({"--laptops, AT_THE_END", "--laptops now, NOW"})
    void theFileForTheLaptopsIsWrittenBesideWhereItIsWanted(
            final String option, final Explained explained) throws IOException {
        final Path names = folder.resolve("names.csv");
        Files.writeString(names, "Wren, Swift");

        assertThat(sheet("--skills drop --problems 1 --names " + names + " " + option)).isZero();
        assertThat(papers()).hasSize(4);
        final SheetFile file = SheetFile.read(papers().get(3));
        assertThat(file.names().names()).containsExactly("Wren", "Swift");
        assertThat(file.explained()).isEqualTo(explained);
        assertThat(said.toString()).contains(file.mark(), papers().get(3).toString());
    }

    private static String text(final Path pdf) throws IOException {
        try (var document = org.apache.pdfbox.Loader.loadPDF(pdf.toFile())) {
            return new org.apache.pdfbox.text.PDFTextStripper().getText(document);
        }
    }
}
