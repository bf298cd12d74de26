package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Step;
import wireworthy.working.Worked;

/** The banks that come with the program. */
class BankFilesTest {
    private static final Path FOLDER = Path.of("problem-banks");
    private static final int DRAWS = 200;
    private static final int MOST_WORDS = 45;
    private static final int FEWEST_TEMPLATES = 4;

    /**
     * Skills that a problem exercises without a line of their own: a unit, another system, a size
     * one can buy, a length that holds the way back already.
     */
    private static final Set<Skill> ACROSS_LINES =
            Set.of(
                    Skill.UNITS_AND_PREFIXES,
                    Skill.CHANGE_OF_SYSTEM_VOLTAGE,
                    Skill.NEXT_STANDARD_SIZE,
                    Skill.OUT_AND_BACK_LENGTH);

    private static final Banks BANKS = Banks.read(List.of());
    private static final Solver SOLVER = new Solver();

    @Test
    void allOfThemAreRead() {
        assertThat(BANKS.problems()).isEmpty();
        assertThat(BANKS.banks())
                .extracting(Bank::id)
                .contains("power", "current", "parallel-loads", "fuse-margin", "voltage-drop");
    }

    @ParameterizedTest
    @MethodSource("files")
    void fitsTheSchema(final Path file) throws IOException {
        assertThat(schema().validate(Files.readString(file), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"version\": 1    | \"version\": 1.5",
                "\"version\": 1    | \"version\": 1, \"author\": \"Robin\"",
                "\"difficulty\": 0 | \"difficulty\": 2",
                "\"step\": 0.1     | \"step\": 0",
                "\"unit\": \"A\"   | \"units\": \"A\"",
                "\"skill\": \"drop\" | \"skill\": \"dropping\"",
            })
    void theSchemaNoticesWhatIsOutOfPlace(final String sound, final String broken)
            throws IOException {
        final String text = Files.readString(FOLDER.resolve("voltage-drop.json"));

        assertThat(text).contains(sound);
        assertThat(schema().validate(text.replace(sound, broken), InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void eachBankHasEnoughTemplatesForMixing() {
        assertThat(BANKS.banks())
                .allSatisfy(
                        bank ->
                                assertThat(bank.templates())
                                        .hasSizeGreaterThanOrEqualTo(FEWEST_TEMPLATES));
    }

    @ParameterizedTest
    @MethodSource("templates")
    void everyDrawCanBeWorked(final Template template) {
        final SplitMix random = new SplitMix(7);
        for (int i = 0; i < DRAWS; i++) {
            final Worked worked = worked(new Drawn(template, random));

            assertThat(values(template, worked))
                    .as("draw %d", i)
                    .allSatisfy(value -> assertThat(value).isFinite().isPositive());
        }
    }

    @ParameterizedTest
    @MethodSource("templates")
    void theTextIsShortAndLeavesNoPlaceOpen(final Template template) {
        final SplitMix random = new SplitMix(8);
        for (int i = 0; i < DRAWS; i++) {
            final Drawn drawn = new Drawn(template, random);
            final String text = drawn.filled(template.text());

            assertThat(text.split("\\s+")).hasSizeLessThanOrEqualTo(MOST_WORDS);
            assertThat(text + drawn.filled(String.join(" ", template.task().texts())))
                    .doesNotContain("{", "}");
        }
    }

    /** A constant that the working takes has to stand in the text, so it has to be given. */
    @ParameterizedTest
    @MethodSource("templates")
    void nothingIsAssumedBehindTheLearnersBack(final Template template) {
        final Worked worked = worked(new Drawn(template, new SplitMix(9)));

        final List<Ref> taken =
                way(template, worked).flatMap(step -> inputs(worked, step)).toList();

        assertThat(taken).isNotEmpty().noneMatch(worked.plan().assumed()::contains);
    }

    @ParameterizedTest
    @MethodSource("templatesOfOneLine")
    void aLineOfTheWorkingExercisesItsSkill(final Template template) {
        final Worked worked = worked(new Drawn(template, new SplitMix(10)));
        final List<Skill> skills =
                way(template, worked).map(step -> step.direction().skill()).toList();

        assertThat(skills).contains(template.skill());
    }

    static Stream<Template> templatesOfOneLine() {
        return templates().filter(template -> !ACROSS_LINES.contains(template.skill()));
    }

    static Stream<Template> templates() {
        return BANKS.templates().stream().filter(Template::asksFigures);
    }

    static List<Path> files() throws IOException {
        final List<Path> files = new ArrayList<>(banks(FOLDER));
        files.addAll(banks(Path.of("src/test/resources/wireworthy/practice/banks")));
        return files;
    }

    private static List<Path> banks(final Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> !file.toString().endsWith(".schema.json"))
                    .sorted()
                    .toList();
        }
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(FOLDER.resolve("bank.schema.json")));
    }

    private static Worked worked(final Drawn drawn) {
        final Question question = QuestionReader.read(drawn.question());
        return SOLVER.work(question);
    }

    private static List<Double> values(final Template template, final Worked worked) {
        return asked(template, worked).map(ref -> worked.value(ref).orElse(Double.NaN)).toList();
    }

    private static Stream<Ref> asked(final Template template, final Worked worked) {
        return template.finds().stream().map(find -> worked.refs(find).get(0));
    }

    private static Stream<Step> way(final Template template, final Worked worked) {
        return asked(template, worked).flatMap(ref -> worked.wayTo(ref).stream());
    }

    private static Stream<Ref> inputs(final Worked worked, final Step step) {
        return Arrays.stream(step.inputs()).mapToObj(worked.plan()::at);
    }
}
