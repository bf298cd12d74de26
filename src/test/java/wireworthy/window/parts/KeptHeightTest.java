package wireworthy.window.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What scrolls is measured at two widths in every pass: neither drives the other out. */
class KeptHeightTest {
    private final KeptHeight kept = new KeptHeight();
    private final List<Double> worked = new ArrayList<>();

    private double at(final double width) {
        return kept.of(width, this::work);
    }

    private double work(final double width) {
        worked.add(width);
        return 1000 / width;
    }

    @Test
    void aHeightIsWorkedOnceForEachOfTwoWidths() {
        for (int i = 0; i < 3; i++) {
            assertThat(at(500)).isEqualTo(2);
            assertThat(at(400)).isEqualTo(2.5);
        }
        assertThat(worked).containsExactly(500.0, 400.0);
    }

    @Test
    void ofThreeWidthsTheLastTwoAreKept() {
        at(500);
        at(400);
        at(250);
        assertThat(at(400)).isEqualTo(2.5);
        assertThat(at(250)).isEqualTo(4);
        assertThat(worked).containsExactly(500.0, 400.0, 250.0);
        assertThat(at(500)).isEqualTo(2);
        assertThat(worked).hasSize(4);
    }

    @Test
    void whatIsForgottenIsWorkedAnew() {
        at(500);
        at(400);
        kept.forget();
        at(400);
        at(500);
        assertThat(worked).containsExactly(500.0, 400.0, 400.0, 500.0);
    }
}
