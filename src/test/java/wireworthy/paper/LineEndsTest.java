package wireworthy.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A figure stays on one line with its unit. */
class LineEndsTest {
    /** The text as it may be parted, its parts joined by a bar. */
    private static String parted(final String text) {
        final FSTextBreaker ends = new LineEnds();
        ends.setText(text);
        final List<String> parts = new ArrayList<>();
        int from = 0;
        for (int at = ends.next(); at != BreakIterator.DONE; at = ends.next()) {
            parts.add(text.substring(from, at));
            from = at;
        }
        return String.join("|", parts);
    }

    @ParameterizedTest
    @CsvSource({
        "the ambient factor for 51 °C around, the |ambient |factor |for |51 °C |around",
        "insulation temperature °C here, insulation |temperature |°C |here",
        "cable of 1.5 mm² and 7 m run, cable |of |1.5 mm² |and |7 m |run",
        "hold 300 Ah or 3840 Wh, hold |300 Ah |or |3840 Wh",
        "read in ISO 8820-3 or 33 CFR 183.425, read |in |ISO 8820-|3 |or |33 CFR 183.425",
        "8 h at 4 mm, 8 h |at |4 mm",
        "at 12 V a lamp, at |12 V |a |lamp",
        "take 4 lamps, take |4 |lamps"
    })
    void aLineEndsNeitherBetweenFigureAndUnitNorWithinAUnit(final String text, final String parts) {
        assertThat(parted(text)).isEqualTo(parts);
    }
}
