package wireworthy.evening.handin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;

/** Answers begun on a machine, and handed in to a folder. */
class HandedInTest {
    private static final Instant BEGUN = Instant.parse("2026-03-01T19:00:00Z");
    private static final HandIn WREN =
            HandIn.begun("ABCD-EFGH", 2, "Wren", BEGUN)
                    .with(new Reply(1, List.of("4.5 A"), false, BEGUN.plusSeconds(60)));

    @TempDir Path folder;

    @Test
    void handingInTwiceSaysSo() {
        assertThat(HandedIn.into(folder, WREN).again()).isFalse();
        final HandIn later = WREN.with(new Reply(2, List.of("B"), true, BEGUN.plusSeconds(90)));
        final HandedIn again = HandedIn.into(folder, later);
        assertThat(again.again()).isTrue();
        assertThat(HandInFile.read(again.file())).isEqualTo(later);
    }

    @Test
    void anothersAnswersUnderTheSameNumberAreNotLost() {
        final Path file = HandedIn.into(folder, WREN).file();
        final HandIn other = HandIn.begun("ABCD-EFGH", 2, "Wren", BEGUN.plusSeconds(1));
        assertThatThrownBy(() -> HandedIn.into(folder, other))
                .isInstanceOf(EveningProblem.class)
                .hasMessageContaining("Other answers of learner 2");
        assertThat(HandInFile.read(file)).isEqualTo(WREN);
    }

    @Test
    void aFolderThatIsNoneIsRefused() throws IOException {
        final Path file = Files.writeString(folder.resolve("a-file"), "x");
        assertThatThrownBy(() -> HandedIn.into(file, WREN))
                .isInstanceOf(EveningProblem.class)
                .hasMessageContaining("can't be written");
    }

    @Test
    void whatWasBegunCanBeGoneOnWithUntilItIsTakenAway() throws IOException {
        final BegunSheets begun = new BegunSheets(folder.resolve("begun"));
        final SheetFile sheet =
                new SheetFile("ABCD-EFGH", Explained.NOW, new CodeNames(List.of("Finch", "Wren")));
        assertThat(begun.all()).isEmpty();
        begun.keep(sheet);
        begun.keep(WREN);
        assertThat(begun.of("ABCD-EFGH", 2)).contains(WREN);
        assertThat(begun.of("ABCD-EFGH", 1)).isEmpty();
        assertThat(begun.all()).containsExactly(new BegunSheets.Begun(sheet, WREN, false));
        assertThat(begun.unfinished()).containsExactly("ABCD-EFGH");
        begun.handedIn(WREN);
        assertThat(begun.all()).containsExactly(new BegunSheets.Begun(sheet, WREN, true));
        assertThat(begun.unfinished()).isEmpty();
        begun.forget(WREN);
        assertThat(begun.all()).isEmpty();
        // The sheet has gone with the last answers to it; begun anew, it is not handed in.
        assertThat(begun.sheets()).isEmpty();
        begun.keep(sheet);
        begun.keep(WREN);
        assertThat(begun.unfinished()).containsExactly("ABCD-EFGH");
    }

    @Test
    void answersThatCantBeReadArePutAsideNotLost() throws IOException {
        final BegunSheets begun = new BegunSheets(folder);
        begun.keep(WREN);
        final Path file = folder.resolve(HandInFile.name("ABCD-EFGH", 2));
        Files.writeString(file, "{");
        assertThat(begun.of("ABCD-EFGH", 2)).isEmpty();
        assertThat(folder.resolve(file.getFileName() + ".damaged")).hasContent("{");
    }
}
