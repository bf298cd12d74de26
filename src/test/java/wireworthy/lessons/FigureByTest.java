package wireworthy.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.practice.ContentFiles;
import wireworthy.record.SumsInUse;
import wireworthy.record.WireSizes;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;

/** What a lesson leaves open in a figure goes by the sums in use; what it names stays. */
class FigureByTest {
    private static final String FUSE =
            """
            id: fuse-between
            circuit-current: {from: 5 A, to: 20 A, step: 1 A, start: 9 A}
            section: {of: [1.5 mm2, 2.5 mm2, 4 mm2], start: 2.5 mm2}
            two-core-cables: 1
            fuse-series: blade
            try: Why?
            """;

    @TempDir private Path folder;

    private Figure figure(final String block) throws IOException {
        Files.writeString(
                folder.resolve("own.md"),
                "---\nid: own\ntitle: Own\nskills: [drop]\n"
                        + "reviewed: false\n---\n```figure\n"
                        + block
                        + "```\n");
        return Lessons.of(new Solver(), ContentFiles.in(folder, ".md"))
                .lesson("own")
                .orElseThrow()
                .screens()
                .get(0)
                .blocks()
                .stream()
                .filter(Block.LiveFigure.class::isInstance)
                .map(live -> ((Block.LiveFigure) live).figure())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsLeftOpenIsUsualAtFirst() throws IOException {
        final Figure figure = figure(FUSE);
        assertThat(figure.open())
                .containsExactlyInAnyOrder(FigureOption.CABLE_TABLE, FigureOption.MARGIN);
        assertThat(figure.by(SumsInUse.USUAL)).isEqualTo(figure);
    }

    @Test
    void whatIsLeftOpenGoesByTheSumsInUse() throws IOException {
        final SumsInUse own = SumsInUse.USUAL.withCableTable("iso-10133").withMargin(1.5);
        final Figure figure = figure(FUSE).by(own);
        assertThat(figure.handle(FigureOption.CABLE_TABLE))
                .isEqualTo(new Handle.Named(Quantity.CABLE_TABLE, "iso-10133"));
        assertThat(figure.handle(FigureOption.MARGIN))
                .isEqualTo(new Handle.Fixed(Quantity.MARGIN, 1.5));
    }

    @Test
    void whatALessonNamesStays() throws IOException {
        final SumsInUse own = SumsInUse.USUAL.withCableTable("iso-10133").withMargin(1.5);
        final Figure named = figure(FUSE + "cable-table: thin-wall\nmargin: 1.25\n");
        assertThat(named.by(own)).isEqualTo(named);
    }

    @Test
    void aTableThatEndsBelowASectionIsNotTaken() throws IOException {
        final Figure thick = figure(FUSE.replace("4 mm2]", "6 mm2]"));
        final Figure by = thick.by(SumsInUse.USUAL.withCableTable("standard-wall"));
        assertThat(by.handle(FigureOption.CABLE_TABLE))
                .isEqualTo(new Handle.Named(Quantity.CABLE_TABLE, "thin-wall"));
    }

    @Test
    void whereCableIsSoldByGaugeTheSectionsAreTheNextGaugesThatAreNoThinner() throws IOException {
        final Figure figure = figure(FUSE).by(SumsInUse.USUAL.withSizes(WireSizes.AWG));
        assertThat(figure.handle(FigureOption.SECTION))
                .isEqualTo(new Handle.Choice(Quantity.GAUGE, List.of(14.0, 12.0, 10.0), 12));
    }
}
