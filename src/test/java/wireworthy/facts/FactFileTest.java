package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class FactFileTest {
    private static final String HEADER =
            """
            # title: Reels in the shed
            # source: Stock book of the Heron
            # provenance: common practice, no source
            # scope: The shed.
            """;

    @Test
    void readsHeaderNotesAndQuotedCells() {
        final FactTable table =
                FactFile.parse(
                        "shed",
                        HEADER
                                + """
                                # note: Counted twice.
                                "Section, mm2",Colour
                                2.5,"red, faded"
                                4,
                                """);

        assertThat(table)
                .isEqualTo(
                        new FactTable(
                                "shed",
                                "Reels in the shed",
                                "The shed.",
                                new Source("Stock book of the Heron", Provenance.COMMON_PRACTICE),
                                List.of("Counted twice."),
                                List.of("Section, mm2", "Colour"),
                                List.of(List.of("2.5", "red, faded"), List.of("4", ""))));
    }

    @Test
    void aFileWithoutItsSourceIsRefused() {
        assertThatThrownBy(
                        () ->
                                FactFile.parse(
                                        "shed", HEADER.replace("# source", "# sauce") + "a\n1\n"))
                .hasMessageContaining("shed")
                .hasMessageContaining("# source: ");
    }

    @Test
    void aFileOfUnknownStandingIsRefused() {
        assertThatThrownBy(
                        () ->
                                FactFile.parse(
                                        "shed",
                                        HEADER.replace("common practice", "hearsay") + "a\n1\n"))
                .hasMessageContaining("hearsay");
    }

    @Test
    void aRowThatIsTooShortIsRefused() {
        assertThatThrownBy(() -> FactFile.parse("shed", HEADER + "a,b\n1,2\n3\n"))
                .hasMessageContaining("shed")
                .hasMessageContaining("[3]")
                .hasMessageContaining("the heading has 2");
    }

    @Test
    void aFileWithoutRowsIsRefused() {
        assertThatThrownBy(() -> FactFile.parse("shed", HEADER + "a,b\n"))
                .hasMessageContaining("shed")
                .hasMessageContaining("rows");
    }
}
