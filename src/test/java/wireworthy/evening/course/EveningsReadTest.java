package wireworthy.evening.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.evening.Difficulty;
import wireworthy.evening.Shelf;
import wireworthy.evening.wish.Wanted;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.rules.Skill;
import wireworthy.texts.Language;
import wireworthy.working.Solver;

/** Evenings to start from: four came with the program, a leader's own stand beside them. */
class EveningsReadTest {
    private static final Map<String, String> LESSONS = Map.of("power", "Power");
    private static final Path NONE = Path.of("no-such-folder");

    private static final Pattern SHOWN = Pattern.compile("`lesson:([a-z-]+)`");
    private static final Pattern SKILLS = Pattern.compile("skills: \\[(.*)]");

    /** The row of the run from which on the sheet is worked. */
    private static final String THE_SHEET = "\\| (The sheet|Das Blatt)";

    @TempDir Path folder;

    @Test
    void fourCameWithTheProgramAndTheirSheetsCanBeMade() {
        final Evenings all = Evenings.read(NONE, titles());
        assertThat(all.troubles()).isEmpty();
        assertThat(all.evenings()).hasSize(4);
        final Shelf shelf = Shelf.builtIn();
        assertThat(all.evenings())
                .allSatisfy(each -> assertThat(each.wish().sheet(shelf).problems()).isPositive());
    }

    /** Nobody is asked on paper what no lesson has told them, this evening or before. */
    @ParameterizedTest
    @ValueSource(strings = {"evenings", "evenings/de"})
    void whatASheetAsksWasShownBeforeIt(final String files) throws IOException {
        final Shelf shelf = Shelf.builtIn();
        final Set<String> shown = new HashSet<>();
        for (final Evening evening : Evenings.read(NONE, titles()).evenings()) {
            final String text =
                    Files.readString(
                            Path.of(files, String.valueOf(Path.of(evening.file()).getFileName())));
            SHOWN.matcher(text.split(THE_SHEET)[0])
                    .results()
                    .forEach(found -> shown.addAll(skills(found.group(1))));
            assertThat(shown)
                    .as(evening.file())
                    .containsAll(
                            evening.wish().sheet(shelf).templates().stream()
                                    .map(each -> each.skill().id())
                                    .toList());
        }
    }

    /** The skills that a lesson says it teaches. */
    private static List<String> skills(final String lesson) {
        try (Stream<Path> files = Files.list(Path.of("lessons"))) {
            for (final Path file : files.filter(it -> it.toString().endsWith(".md")).toList()) {
                final String text = Files.readString(file);
                final Matcher skills = SKILLS.matcher(text);
                if (text.contains("\nid: " + lesson + "\n") && skills.find()) {
                    return List.of(skills.group(1).split(", "));
                }
            }
            throw new AssertionError("no lesson " + lesson);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void thoseOfAnotherLanguagePrintTheSame() {
        final Map<String, String> titles = titles();
        final Evenings english = Evenings.read(NONE, titles);
        try {
            Language.use(Language.of("de"));
            final Evenings german = Evenings.read(NONE, titles);

            assertThat(german.troubles()).isEmpty();
            assertThat(german.evenings())
                    .extracting(Evening::file, Evening::wish)
                    .containsExactlyElementsOf(
                            english.evenings().stream()
                                    .map(each -> tuple(each.file(), each.wish()))
                                    .toList());
            assertThat(german.evenings().get(0).title())
                    .isEqualTo("Erster Abend: Watt, Volt, Ampere");
        } finally {
            Language.use(Language.ENGLISH);
        }
    }

    private static Map<String, String> titles() {
        return Lessons.read(new Solver(), java.util.Optional.empty()).contents().stream()
                .collect(Collectors.toMap(LessonHeading::id, LessonHeading::title));
    }

    @Test
    void theLineToPrintSaysWhatIsWanted() throws IOException {
        final Evening own =
                own(
                        """
                        # Ours

                            sheet --skills drop,derating --problems 5 --difficulty easy --copies 7

                        Show `lesson:power`.
                        """);
        assertThat(own.title()).isEqualTo("Ours");
        final Wanted wanted = own.wish().wanted();
        assertThat(wanted.skills()).containsExactlyInAnyOrder(Skill.DROP, Skill.DERATING);
        assertThat(wanted.problems()).isEqualTo(5);
        assertThat(wanted.difficulties()).containsExactly(Difficulty.EASY);
        assertThat(own.wish().who().copies()).isEqualTo(7);
        assertThat(own.wish().who().ownNumbers()).isFalse();
    }

    private Evening own(final String text) throws IOException {
        Files.writeString(folder.resolve("ours.md"), text);
        final Evenings all = Evenings.read(folder, LESSONS);
        return all.evenings().stream()
                .filter(each -> each.file().equals("ours.md"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(all.troubles()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "# A~    sheet --skills dorp | ours.md, line 2: Nothing is called \"dorp\"",
                "# A~    sheet --skill drop | ours.md, line 2: \"--skill\" is no option",
                "# A~    sheet --problems many | ours.md, line 2: \"many\" after --problems",
                "# A~    sheet --problems 3~`lesson:pwer` | ours.md, line 3: No lesson is called",
                "# A~nothing | ours.md, line 1: It says nowhere what to print",
                "~    sheet --problems 3 | ours.md, line 1: The evening has no title"
            })
    void whatIsBrokenIsNamedWithLineAndRemedy(final String text, final String said)
            throws IOException {
        Files.writeString(folder.resolve("ours.md"), text.replace('~', '\n'));
        assertThat(Evenings.read(folder, LESSONS).troubles())
                .filteredOn(each -> each.startsWith("ours.md"))
                .singleElement()
                .asString()
                .startsWith(said)
                .contains(". ");
    }
}
