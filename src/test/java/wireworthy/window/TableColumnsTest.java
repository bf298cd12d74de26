package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.facts.FactTables;

/** How the columns of a table share the room there is. */
class TableColumnsTest {
    private static final TableColumns FUSES = columns("fuse-series");

    private static TableColumns columns(final String id) {
        return TableColumns.of(
                FactTables.all().stream()
                        .filter(it -> it.id().equals(id))
                        .findFirst()
                        .orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"200", "70", "60", "50"})
    void theyNeverTakeMoreRoomThanThereIs(final double room) {
        final List<Double> widths = FUSES.in(room);
        assertThat(widths).hasSize(7);
        assertThat(widths.stream().mapToDouble(it -> it).sum()).isLessThan(room);
    }

    @Test
    void whatHasRoomKeepsItsWidthWhileTheWidestGiveWay() {
        final List<Double> roomy = FUSES.in(200);
        final List<Double> scarce = FUSES.in(60);
        assertThat(scarce.get(0)).isEqualTo(roomy.get(0));
        assertThat(scarce.get(3)).isLessThan(roomy.get(3));
    }

    @Test
    void whereWordsWouldBreakThereAreNoColumns() {
        assertThat(FUSES.in(25)).isEmpty();
    }

    /** At 1024 pixels eight columns of figures still stand side by side. */
    @Test
    void figuresStandCloserBeforeTheyAreStacked() {
        assertThat(columns("boat-cable").in(38)).hasSize(8);
        assertThat(columns("boat-cable").close(38)).isTrue();
    }

    @Test
    void aHeadingOverFiguresEndsItsLinesItself() {
        assertThat(TableColumns.flush("Area added up from the strands", 7))
                .isEqualTo("Area added\nup from the\nstrands");
    }
}
