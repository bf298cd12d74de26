package wireworthy.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One or two wrong signs, and any two swapped, are always noticed. */
class SignsTest {
    private final SplittableRandom random = new SplittableRandom(11);

    private int[] mark(final int signs) {
        return Signs.checked(random.ints(signs - Signs.CHECKS, 0, 32).toArray());
    }

    @Test
    void everySignIsReadAsItselfAndThoseLeftOutAsWhatTheyLookLike() {
        for (int element = 0; element < 32; element++) {
            assertThat(Signs.element(Signs.sign(element))).isEqualTo(element);
            assertThat(Signs.element(Character.toLowerCase(Signs.sign(element))))
                    .isEqualTo(element);
        }
        assertThat("ILOU".chars().mapToObj(it -> Signs.sign(Signs.element((char) it))))
                .containsExactly('1', '1', '0', 'V');
        assertThat(Signs.element('?')).isEqualTo(-1);
    }

    @ParameterizedTest
    @ValueSource(ints = {12, 20, 32})
    void everySingleWrongSignIsNoticed(final int signs) {
        final int[] mark = mark(signs);
        assertThat(Signs.hold(mark)).isTrue();
        for (int place = 0; place < signs; place++) {
            for (int error = 1; error < 32; error++) {
                final int[] wrong = mark.clone();
                wrong[place] ^= error;
                assertThat(Signs.hold(wrong)).isFalse();
            }
        }
    }

    /** Whether errors show depends on the errors alone, as the code is linear: so all are tried. */
    @ParameterizedTest
    @ValueSource(ints = {12, 20, 32})
    void everyPairOfWrongSignsIsNoticed(final int signs) {
        final int[] mark = mark(signs);
        int noticed = 0;
        for (int one = 0; one < signs; one++) {
            for (int other = one + 1; other < signs; other++) {
                for (int errors = 0; errors < 31 * 31; errors++) {
                    final int[] wrong = mark.clone();
                    wrong[one] ^= errors % 31 + 1;
                    wrong[other] ^= errors / 31 + 1;
                    noticed += Signs.hold(wrong) ? 0 : 1;
                }
            }
        }
        assertThat(noticed).isEqualTo(31 * 31 * signs * (signs - 1) / 2);
    }

    @Test
    void anyTwoDifferentSignsSwappedAreNoticed() {
        for (int times = 0; times < 200; times++) {
            final int[] mark = mark(20);
            for (int one = 0; one < mark.length; one++) {
                for (int other = one + 1; other < mark.length; other++) {
                    final int[] wrong = mark.clone();
                    wrong[one] = mark[other];
                    wrong[other] = mark[one];
                    assertThat(Signs.hold(wrong)).isEqualTo(mark[one] == mark[other]);
                }
            }
        }
    }
}
