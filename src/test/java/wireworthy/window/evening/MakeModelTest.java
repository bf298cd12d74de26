package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.SystemVoltage;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.evening.handin.SheetFile;
import wireworthy.evening.summary.NextWeek;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** A leader chooses a sheet and makes its papers. */
class MakeModelTest {
    @TempDir Path folder;

    private MakeModel model;

    @BeforeEach
    void begin() {
        model = begun();
    }

    private MakeModel begun() {
        final MakeModel fresh = new MakeModel(TestDesks.desk(folder, folder), Background.atOnce());
        fresh.begin();
        return fresh;
    }

    private String mark() {
        return model.sheet().map(Sheet::mark).orElseThrow();
    }

    @Test
    void aChoiceShowsItsSheetAndItsPages() {
        assertThat(model.sheet()).hasValueSatisfying(it -> assertThat(it.problems()).isEqualTo(8));
        assertThat(model.pages().get()).isPresent();
    }

    @Test
    void otherProblemsHaveAnotherMark() {
        final String before = mark();
        model.others();
        assertThat(mark()).isNotEqualTo(before);
    }

    @Test
    void theLastChoiceIsThereAgain() {
        model.change(it -> it.withWanted(it.wanted().withSkills(Set.of(Skill.DERATING))));
        assertThat(begun().wish()).isEqualTo(model.wish());
    }

    @Test
    void aMarkBringsBackItsSheet() {
        final String first = mark();
        model.change(it -> it.withWanted(it.wanted().withProblems(3)));
        model.openMark(first.toLowerCase(java.util.Locale.ROOT));
        assertThat(mark()).isEqualTo(first);
        assertThat(model.comesFrom().markSaid().get()).isEmpty();
        model.openMark("0" + first.substring(1, first.length() - 1) + "0");
        assertThat(model.comesFrom().markSaid().get()).contains("no sheet mark");
        assertThat(mark()).isEqualTo(first);
    }

    @Test
    void skillsThatHaveNothingAreLeftOut() {
        model.change(
                it ->
                        it.withWanted(
                                it.wanted()
                                        .withSkills(Set.of(Skill.values()))
                                        .withVoltages(Set.of(SystemVoltage.V12))));
        assertThat(model.sheet()).isEmpty();
        model.leaveOut();
        assertThat(model.sheet()).isPresent();
    }

    @Test
    void anEveningFillsTheChoice() {
        model.use(model.evenings().evenings().stream().skip(1).findFirst());
        assertThat(model.wish().wanted().skills())
                .containsExactlyInAnyOrder(
                        Skill.FUSE_FLOOR,
                        Skill.FUSE_CEILING,
                        Skill.FUSE_CHOICE,
                        Skill.WHERE_FUSES_GO);
        assertThat(model.comesFrom().evening().get()).isPresent();
    }

    @Test
    void theSheetForNextWeekIsThatOfNoEveningAndSaysWhatItWasChosenBy() {
        model.use(model.evenings().evenings().stream().findFirst());
        final SheetPlan plan =
                new SheetPlan(Pick.BySkills.of(Set.of(Skill.DROP), 4), true, 9, false, 7);
        model.show(new NextWeek(plan, new ChosenFor("Most went wrong on: drop.")));
        assertThat(model.comesFrom().evening().get()).isEmpty();
        assertThat(model.chosenFor().why()).isEqualTo("Most went wrong on: drop.");
        assertThat(model.sheet()).hasValueSatisfying(it -> assertThat(it.plan()).isEqualTo(plan));
        model.others();
        assertThat(model.chosenFor().said()).isTrue();
        model.change(it -> it.withWanted(it.wanted().withProblems(3)));
        assertThat(model.chosenFor().said()).isFalse();
    }

    @Test
    void codeNamesForgottenStandNowhereInTheFolderOfTheSheets() throws IOException {
        model.change(it -> it.withWho(it.who().withNamed(true).withNames("Wren\nFinch")));
        final BegunSheets here = TestDesks.desk(folder, folder).begun();
        new PapersModel(here, Background.atOnce())
                .make(
                        model.sheet().orElseThrow(),
                        model.shown(),
                        model.chosenFor(),
                        folder.resolve("out"));
        final Path sheets = folder.resolve("sheets");
        assertThat(holding(sheets, "Wren")).hasSize(2);
        final List<Boolean> done = new ArrayList<>();
        model.forgetNames(done::add);
        assertThat(done).containsExactly(true);
        assertThat(model.wish().who().named()).isFalse();
        assertThat(holding(sheets, "Wren")).isEmpty();
    }

    private static List<Path> holding(final Path folder, final String name) throws IOException {
        final List<Path> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (final Path file : files.filter(Files::isRegularFile).toList()) {
                if (Files.readString(file).contains(name)) {
                    all.add(file);
                }
            }
        }
        return all;
    }

    @Test
    void thePapersAndTheFileForTheLaptopsLieInTheFolder() {
        model.change(it -> it.withWanted(it.wanted().withProblems(2)));
        model.change(it -> it.withWho(it.who().withNamed(true).withNames("Wren\nFinch")));
        final PapersModel papers =
                new PapersModel(new BegunSheets(folder.resolve("begun")), Background.atOnce());
        final Path out = folder.resolve("out");
        papers.make(model.sheet().orElseThrow(), model.shown(), model.chosenFor(), out);
        assertThat(papers.said().get().text())
                .contains(out.toString(), ".json; keep the key and the slip finder to yourself");
        assertThat(papers.busy().get()).isFalse();
        assertThat(out.toFile().list())
                .containsExactlyInAnyOrder(
                        "sheet-" + mark() + "-sheets.pdf",
                        "sheet-" + mark() + "-key.pdf",
                        "sheet-" + mark() + "-slip-finder.pdf",
                        "sheet-" + mark() + ".json");
        final SheetFile file = SheetFile.read(out.resolve("sheet-" + mark() + ".json"));
        assertThat(file.names().names()).containsExactly("Wren", "Finch");
    }
}
