package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.HandInFile;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.summary.MadeUpClass;
import wireworthy.evening.summary.NextWeek;
import wireworthy.evening.summary.SlipSeen;
import wireworthy.paper.PaperSize;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** What was handed in is read, summed up, saved and deleted; nothing is copied. */
class AfterModelTest {
    static final Shelf SHELF = Shelf.builtIn();
    static final Set<String> COMMON = Set.of("one-way-length", "margin-left-out");

    @TempDir Path folder;

    private final AfterModel model = new AfterModel(() -> SHELF, () -> 99, Background.atOnce());

    static Sheet sheet(final int learners, final int seed) {
        return Sheet.of(
                new SheetPlan(
                        Pick.BySkills.of(
                                Set.of(Skill.DROP, Skill.FUSE_FLOOR, Skill.CURRENT_FROM_POWER), 6),
                        true,
                        learners,
                        false,
                        seed),
                SHELF);
    }

    static void handIn(final Path folder, final Sheet sheet) throws IOException {
        for (final HandIn each : new MadeUpClass(sheet, COMMON, 3).handIns()) {
            HandInFile.write(folder, each);
        }
    }

    private AfterState.Read read() {
        assertThat(model.state().get()).isInstanceOf(AfterState.Read.class);
        return (AfterState.Read) model.state().get();
    }

    @Test
    void theTwoSlipsCommonInAClassOfThirtyAreNamedFirst() throws IOException {
        handIn(folder, sheet(30, 23));
        model.read(folder);
        assertThat(read().summary().handedIn()).isEqualTo(30);
        assertThat(read().summary().slips().subList(0, 2))
                .extracting(SlipSeen::id)
                .containsExactlyInAnyOrderElementsOf(COMMON);
    }

    @Test
    void theSheetWithMostHandInsComesFirstAndTheOthersCanBeChosen() throws IOException {
        final Sheet few = sheet(2, 1);
        final Sheet many = sheet(4, 2);
        handIn(folder, few);
        handIn(folder, many);
        model.read(folder);
        assertThat(read().summary().sheet().mark()).isEqualTo(many.mark());
        assertThat(read().handIns().leftOut()).hasSize(2);
        model.choose(few.mark());
        assertThat(read().summary().sheet().mark()).isEqualTo(few.mark());
        assertThat(read().summary().handedIn()).isEqualTo(2);
    }

    /** However many claim a sheet that can't be made, those of a real one are summed up. */
    @Test
    void aSheetThatCannotBeMadeIsNamedAndNotTaken() throws IOException {
        for (int i = 1; i <= 5; i++) {
            HandInFile.write(folder, HandIn.begun("0000-0000", i, "", MadeUpClass.NOW));
        }
        model.read(folder);
        assertThat(model.state().get())
                .isInstanceOfSatisfying(
                        AfterState.None.class,
                        none -> {
                            assertThat(none.trouble()).contains("other problem banks");
                            assertThat(none.leftOut()).hasSize(5);
                        });
        handIn(folder, sheet(2, 1));
        model.read(folder);
        assertThat(read().summary().handedIn()).isEqualTo(2);
        assertThat(read().handIns().leftOut()).hasSize(5);
    }

    @Test
    void aFolderWithoutHandInsNamesEveryFile() throws IOException {
        Files.writeString(folder.resolve("notes.txt"), "bring the projector");
        model.read(folder);
        assertThat(((AfterState.None) model.state().get()).leftOut())
                .extracting(HandIns.LeftOut::file)
                .containsExactly("notes.txt");
        model.read(folder.resolve("none"));
        assertThat(model.state().get()).isInstanceOf(AfterState.Refused.class);
    }

    @Test
    void howFarTheReadingIsIsSaid() throws IOException {
        handIn(folder, sheet(12, 1));
        final List<AfterState> seen = new ArrayList<>();
        model.state()
                .subscribe(
                        now -> {
                            seen.add(now);
                        });
        model.read(folder);
        assertThat(seen).contains(new AfterState.Reading(6, 12));
        assertThat(seen.get(seen.size() - 1)).isInstanceOf(AfterState.Read.class);
    }

    @Test
    void itIsSavedToPrintAndAsASpreadsheet() throws IOException {
        handIn(folder, sheet(3, 1));
        model.read(folder);
        final Path out = Files.createDirectory(folder.resolve("out"));
        model.savePdf(out.resolve("s.pdf"), PaperSize.A4);
        assertThat(model.said().get()).contains("s.pdf");
        model.saveCsv(out.resolve("s.csv"));
        assertThat(out.resolve("s.pdf")).isNotEmptyFile();
        assertThat(out.resolve("s.csv")).isNotEmptyFile();
        Files.writeString(out.resolve("none"), "");
        model.saveCsv(out.resolve("none/s.csv"));
        assertThat(model.said().get()).contains("can't be written");
    }

    @Test
    void theSheetForNextWeekIsOfWhatWasMissedAndSaysSo() throws IOException {
        handIn(folder, sheet(12, 1));
        model.read(folder);
        final NextWeek next = read().nextWeek();
        assertThat(next.plan().seed()).isEqualTo(99);
        assertThat(Sheet.of(next.plan(), SHELF).problems()).isEqualTo(6);
        assertThat(next.chosenFor().why()).startsWith("Most went wrong on: ");
    }

    @Test
    void damagedHandInsOfTheSheetAreDeletedTooAndNamedBefore() throws IOException {
        final Sheet sheet = sheet(3, 1);
        handIn(folder, sheet);
        final String damaged = "hand-in-" + sheet.mark() + "-2.json";
        Files.writeString(folder.resolve(damaged), "{\"name\": \"Wren\", \"rep");
        Files.writeString(folder.resolve("notes.txt"), "bring the projector");
        model.read(folder);
        assertThat(model.deletable()).isEqualTo(3);
        assertThat(model.damaged()).containsExactly(damaged);
        model.delete();
        assertThat(folder.toFile().list()).containsExactly("notes.txt");
    }

    @Test
    void whereEveryHandInIsDamagedTheyCanBeDeletedAllTheSame() throws IOException {
        final String damaged = "hand-in-" + sheet(3, 1).mark() + "-2.json";
        Files.writeString(folder.resolve(damaged), "{\"name\": \"Wren\", \"rep");
        Files.writeString(folder.resolve("notes.txt"), "bring the projector");
        model.read(folder);
        assertThat(model.state().get()).isInstanceOf(AfterState.None.class);
        assertThat(model.deletable()).isEqualTo(1);
        assertThat(model.damaged()).containsExactly(damaged);
        model.delete();
        assertThat(folder.toFile().list()).containsExactly("notes.txt");
    }

    @Test
    void onlyTheHandInsOfTheSheetAreDeleted() throws IOException {
        final Sheet sheet = sheet(3, 1);
        handIn(folder, sheet);
        handIn(folder, sheet(2, 2));
        Files.writeString(folder.resolve("notes.txt"), "bring the projector");
        model.read(folder);
        assertThat(model.deletable()).isEqualTo(3);
        model.delete();
        assertThat(model.state().get()).isEqualTo(new AfterState.Nothing());
        assertThat(model.said().get()).isEqualTo("Files deleted: 3.");
        assertThat(folder.toFile().list()).hasSize(3).contains("notes.txt");
    }
}
