package wireworthy.evening.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.evening.Difficulty;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.SystemVoltage;
import wireworthy.evening.handin.Explained;
import wireworthy.paper.PaperSize;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/** What a leader wants: kept, made, or refused with what to change. */
class WishTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final Wish WISH =
            new Wish(
                    new Wanted(
                            false,
                            List.of("voltage-drop/aisle-strips-drop"),
                            Set.of(Skill.DROP, Skill.FUSE_CHOICE),
                            5,
                            Set.of(Difficulty.EASY, Difficulty.MIDDLING),
                            Optional.of(WireSizes.MM2),
                            Set.of(SystemVoltage.V12, SystemVoltage.V24),
                            false),
                    new ForWhom(true, "Wren\nFinch", 3, true),
                    new Handout(PaperSize.LETTER, Explained.NOW),
                    77);

    @TempDir Path folder;

    @Test
    void aChoiceKeptIsReadAsItWas() throws IOException {
        final Path file = folder.resolve("choice.json");
        WishFile.write(file, WISH);
        assertThat(WishFile.read(file)).isEqualTo(WISH);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[1]", "{\"skills\": 3, \"problems\": \"x\", \"seed\": -1}"})
    void aDamagedChoiceIsTheUsualOne(final String text) throws IOException {
        final Path file = folder.resolve("choice.json");
        Files.writeString(file, text);
        assertThat(WishFile.read(file)).isEqualTo(Wish.USUAL);
    }

    @Test
    void theMarkOfASheetBringsBackItsChoice() {
        final Sheet sheet = WISH.sheet(SHELF);
        final Wish again = Wish.USUAL.like(Sheet.marked(sheet.mark(), SHELF).plan());
        assertThat(again.sheet(SHELF).mark()).isEqualTo(sheet.mark());
        assertThat(again.who().copies()).isEqualTo(2);
    }

    @Test
    void whatCanBeMadeSaysHowMuchThereIs() {
        final Made made = Made.of(WISH, SHELF);
        assertThat(made.trouble()).isEmpty();
        assertThat(made.first()).hasSize(5);
        assertThat(made.choosable(WISH.wanted()))
                .isEqualTo(made.fitting().get(Skill.DROP) + made.fitting().get(Skill.FUSE_CHOICE));
    }

    @Test
    void whatCantBeMadeSaysWhatToChange() {
        final Wish wish =
                Wish.USUAL.withWanted(
                        Wanted.USUAL
                                .withSkills(Set.of(Skill.DROP, Skill.CHANGE_OF_SYSTEM_VOLTAGE))
                                .withVoltages(Set.of(SystemVoltage.V12)));
        final Made made = Made.of(wish, SHELF);
        assertThat(made.sheet()).isEmpty();
        assertThat(made.without()).containsExactly(Skill.CHANGE_OF_SYSTEM_VOLTAGE);
        assertThat(made.trouble())
                .isEqualTo(
                        "Nothing on change of system voltage fits. You can allow every voltage,"
                                + " or leave this skill out.");
    }

    @Test
    void ofMoreThanTwoSkillsWithoutAProblemOneSentenceIsEnough() {
        final Wish wish =
                Wish.USUAL.withWanted(
                        Wanted.USUAL
                                .withSkills(Set.of(Skill.values()))
                                .withVoltages(Set.of(SystemVoltage.V48))
                                .withDifficulties(Set.of(Difficulty.EASY)));
        assertThat(Made.of(wish, SHELF).trouble())
                .startsWith("Nothing fits on these: units and prefixes, current from power, ")
                .endsWith("or leave them out.");
    }

    @Test
    void withoutAChoiceItSaysWhatIsMissing() {
        final Wish none = Wish.USUAL.withWanted(Wanted.USUAL.withSkills(Set.of()));
        assertThat(Made.of(none, SHELF).trouble()).startsWith("No skill is chosen. Choose one");
        final Wish twice = Wish.USUAL.withWho(new ForWhom(true, "Wren\nwren", 1, true));
        assertThat(Made.of(twice, SHELF).trouble()).contains("comes twice");
    }
}
