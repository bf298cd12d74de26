package wireworthy.evening.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MissedTest {
    @Test
    void whatWasWrongComesBeforeWhatNobodyCameTo() {
        final Missed open = new Missed("open", 0, 0, 3);
        final Missed wrong = new Missed("wrong", 1, 2, 0);
        final Missed right = new Missed("right", 3, 0, 0);

        assertThat(List.of(right, open, wrong).stream().sorted(Missed.MOST_MISSED_FIRST))
                .containsExactly(wrong, open, right);
    }
}
