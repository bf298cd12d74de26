package wireworthy.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.paper.DistributionOnPaper.Branch;

/** Pages as they go to the printer. */
class PagesTest {
    private static final String SIGNS =
            "0.0172 Ω·mm²/m, ≤ 3 %, 5 × 4 W ÷ 12 V, µ, °C, √, ρ, first off floor efficient";

    private static Pages pages(final PaperSize size) {
        final Pages pages = new Pages("Signs", size, "Checks sums; no licence to touch mains.");
        pages.body().say("h1", "Signs").say("p", SIGNS);
        for (final CircuitOnPaper.Load load : CircuitOnPaper.Load.values()) {
            new CircuitOnPaper(load, "12 V", "2.5 mm²", "4.2 m", "6.4 A", List.of())
                    .into(pages.body());
        }
        pages.body().say("h2", "new-page", "Overleaf");
        new DistributionOnPaper(
                        "24 V, 200 Ah",
                        "main fuse 100 A",
                        "35 mm², 1.2 m",
                        List.of(
                                new Branch(0, true, false, "house lamps", "10 A", "2.5 mm², 6 m"),
                                new Branch(
                                        1, false, true, "reading lamp", "no fuse", "0.75 mm², 1 m"),
                                new Branch(1, true, false, "aisle strips", "5 A", "1 mm², 4 m"),
                                new Branch(2, true, false, "last strip", "3 A", "0.75 mm², 2 m"),
                                new Branch(0, true, false, "fridge", "15 A", "6 mm², 7 m")))
                .into(pages.body());
        return pages;
    }

    private static String text(final byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void equalPagesGiveEqualBytes() {
        assertThat(pages(PaperSize.A4).pdf()).isEqualTo(pages(PaperSize.A4).pdf());
    }

    @ParameterizedTest
    @EnumSource
    void signsAreReadableAndTheFootIsOnEveryPage(final PaperSize size) throws IOException {
        final byte[] pdf = pages(size).pdf();
        Files.write(
                Files.createDirectories(Path.of("target", "pages")).resolve(size + ".pdf"), pdf);

        assertThat(text(pdf)).contains(SIGNS, "2.5 mm²", "1 / 2", "2 / 2");
        assertThat(text(pdf).split("no licence to touch mains", -1)).hasSize(3);
    }

    @ParameterizedTest
    @EnumSource
    void pagesHaveTheSizeOfThePaper(final PaperSize size) throws IOException {
        try (PDDocument document = Loader.loadPDF(pages(size).pdf())) {
            final float width = document.getPage(0).getMediaBox().getWidth();
            assertThat(width).isCloseTo(size == PaperSize.A4 ? 595.3f : 612f, within(0.5f));
        }
    }

    /** Each load hangs on the feed with how many of it there are. */
    @Test
    void asManyLoadsAreDrawnAsThereAre() throws IOException {
        final List<String> loads = List.of("×6", "×2", "");

        assertThat(text(several(loads))).contains("×6", "×2").doesNotContain("…");
        assertThat(text(several(List.of()))).contains("…");
        assertThat(drawn(loads)).isGreaterThan(drawn(List.of("×6", "×2")));
        assertThat(drawn(List.of("×6", "×2"))).isEqualTo(drawn(List.of()));
        assertThat(drawn(List.of("×6"))).isLessThan(drawn(List.of()));
    }

    private static byte[] several(final List<String> beside) {
        final Pages pages = new Pages("Loads", PaperSize.A4, "-", "evening");
        new CircuitOnPaper(CircuitOnPaper.Load.SEVERAL, "12 V", "", "", "", beside)
                .into(pages.body());
        return pages.pdf();
    }

    /** How many lines are drawn. */
    private static long drawn(final List<String> beside) throws IOException {
        try (PDDocument document = Loader.loadPDF(several(beside))) {
            return new PDFStreamParser(document.getPage(0))
                    .parse().stream()
                            .filter(Operator.class::isInstance)
                            .filter(each -> ((Operator) each).getName().equals("S"))
                            .count();
        }
    }

    @Test
    void everyFontIsOneOfOurOwnAndEmbedded() throws IOException {
        try (PDDocument document = Loader.loadPDF(pages(PaperSize.A4).pdf())) {
            for (final PDPage page : document.getPages()) {
                for (final var name : page.getResources().getFontNames()) {
                    final PDFont font = page.getResources().getFont(name);
                    assertThat(font.getName()).contains("Andika");
                    assertThat(font.isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void textIsNeverReadAsMarkup() throws IOException {
        final Pages pages = new Pages("<b>", PaperSize.A4, "&amp;");
        pages.body().say("p", "<script>1 < 2</script> \f &lt;");

        assertThat(text(pages.pdf())).contains("<script>1 < 2</script>", "&lt;", "&amp;");
    }
}
