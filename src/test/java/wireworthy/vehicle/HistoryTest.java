package wireworthy.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HistoryTest {
    private static final Vehicle START = Vehicle.named("a");
    private static final String NAME = "name";

    private static History typed(final History history, final String... names) {
        History now = history;
        for (final String name : names) {
            now = now.changed(now.vehicle().renamed(name), NAME);
        }
        return now;
    }

    @Test
    void lettersTypedIntoOneFieldAreOneStep() {
        final History typed = typed(History.of(START), "He", "Her", "Heron");
        assertThat(typed.undone().orElseThrow().vehicle()).isEqualTo(START);
    }

    @Test
    void leavingAFieldEndsTheStep() {
        final History typed = typed(typed(History.of(START), "Heron").settled(), "Egret");
        assertThat(typed.undone().orElseThrow().vehicle().name()).isEqualTo("Heron");
    }

    @Test
    void aStepThatIsOverStillKnowsWhatItChanged() {
        final History typed = typed(History.of(START), "Heron").settled();
        assertThat(typed.now().change()).isEqualTo(NAME);
        final History again = typed.undone().flatMap(History::redone).orElseThrow();
        assertThat(again.now().change()).isEqualTo(NAME);
    }

    @Test
    void whatWasUndoneCanBeRedone() {
        final History typed = typed(History.of(START), "Heron");
        final History again = typed.undone().flatMap(History::redone).orElseThrow();
        assertThat(again.vehicle().name()).isEqualTo("Heron");
        assertThat(again.redone()).isEmpty();
    }

    @Test
    void aNewChangeForgetsWhatWasUndone() {
        final History undone = typed(History.of(START), "Heron").undone().orElseThrow();
        assertThat(typed(undone, "Egret").redone()).isEmpty();
    }

    @Test
    void nothingIsBeforeTheStart() {
        assertThat(History.of(START).undone()).isEmpty();
        assertThat(History.of(START).changed(START, NAME).undone()).isEmpty();
    }

    @Test
    void theOldestOfVeryManyStepsAreForgotten() {
        History history = History.of(START);
        for (int i = 0; i < 700; i++) {
            history = history.changed(START.renamed("name " + i), "step " + i);
        }
        int back = 0;
        while (history.undone().isPresent()) {
            history = history.undone().orElseThrow();
            back++;
        }
        assertThat(back).isEqualTo(500);
        assertThat(history.vehicle().name()).isEqualTo("name 199");
    }
}
