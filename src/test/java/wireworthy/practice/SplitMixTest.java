package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SplitMixTest {
    @Test
    void givesThePublishedSequence() {
        final SplitMix random = new SplitMix(1234567);

        assertThat(new long[] {random.next(), random.next(), random.next()})
                .containsExactly(
                        6457827717110365317L,
                        3203168211198807973L,
                        Long.parseUnsignedLong("9817491932198370423"));
    }

    @Test
    void staysBelowItsBoundAndReachesAllOfIt() {
        final SplitMix random = SplitMix.of("bounds");

        assertThat(IntStream.range(0, 500).map(i -> random.below(7)).distinct().sorted())
                .containsExactly(0, 1, 2, 3, 4, 5, 6);
    }
}
