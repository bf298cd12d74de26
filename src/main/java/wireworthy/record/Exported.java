package wireworthy.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.csv.CsvMapper;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;
import wireworthy.texts.TextBundle;

/**
 * All that is on record of one person, as it is written to a file.
 *
 * @param wireworthy the form of the file, {@value #FORM}
 * @param code the name
 * @param uids by which the person is known in every copy of the record, the own one first
 */
record Exported(
        int wireworthy, String code, List<String> uids, List<One> answers, List<Screen> screens) {
    private static final TextBundle TEXTS = new TextBundle("record-refusals");
    private static final int FORM = 1;
    private static final long LARGEST = 2L << 30;

    private static final JsonMapper JSON =
            JsonMapper.builder()
                    .enable(SerializationFeature.INDENT_OUTPUT)
                    .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                    .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                    .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
                    .build();
    private static final CsvMapper CSV = new CsvMapper();

    /**
     * One answer.
     *
     * @param at in ISO 8601, UTC
     * @param sound "yes", "no", or empty where the answer could not be read
     */
    record One(
            String uid,
            String at,
            long day,
            String bank,
            int version,
            String template,
            long seed,
            String skill,
            int difficulty,
            String asked,
            String typed,
            String understood,
            String sound,
            boolean aided,
            String slips,
            String suspected,
            double seconds) {
        static One of(final AnswerRows.Kept kept) {
            final Answer answer = kept.answer();
            return new One(
                    kept.uid(),
                    answer.at().toString(),
                    answer.day(),
                    answer.bank(),
                    answer.version(),
                    answer.template(),
                    answer.seed(),
                    answer.skill().id(),
                    answer.difficulty(),
                    answer.asked().map(Quantity::id).orElse(""),
                    answer.typed(),
                    answer.understood(),
                    answer.sound().map(sound -> sound ? "yes" : "no").orElse(""),
                    answer.aided(),
                    AnswerRows.joined(answer.slips()),
                    AnswerRows.joined(answer.suspected()),
                    answer.seconds());
        }

        AnswerRows.Kept by(final String person) {
            return new AnswerRows.Kept(
                    uid,
                    new Answer(
                            Instant.parse(at),
                            day,
                            person,
                            bank,
                            version,
                            template,
                            seed,
                            Skill.valueOf(AnswerRows.constant(skill)),
                            difficulty,
                            Quantity.of(asked),
                            typed,
                            understood,
                            Optional.of(sound).filter(it -> !it.isEmpty()).map("yes"::equals),
                            aided,
                            AnswerRows.parted(slips),
                            AnswerRows.parted(suspected),
                            seconds));
        }
    }

    static Exported of(
            final String code,
            final List<String> uids,
            final List<AnswerRows.Kept> answers,
            final Set<Screen> screens) {
        final List<Screen> sorted = new ArrayList<>(screens);
        sorted.sort(Comparator.comparing(Screen::lesson).thenComparing(Screen::number));
        return new Exported(FORM, code, uids, answers.stream().map(One::of).toList(), sorted);
    }

    List<AnswerRows.Kept> keptBy(final String person) {
        return answers.stream().map(one -> one.by(person)).toList();
    }

    byte[] json() {
        return JSON.writeValueAsBytes(this);
    }

    byte[] csv() {
        return CSV.writer(CSV.schemaFor(One.class).withHeader())
                .writeValueAsString(answers)
                .getBytes(StandardCharsets.UTF_8);
    }

    static Exported read(final Path file) {
        try {
            if (Files.size(file) > LARGEST) {
                throw other(file, TEXTS.of("import-why.large"));
            }
            final Exported read = JSON.readValue(Files.readAllBytes(file), Exported.class);
            if (read.wireworthy > FORM) {
                throw other(file, TEXTS.of("import-why.newer"));
            }
            if (read.uids.isEmpty() || read.code.isBlank()) {
                throw other(file, TEXTS.of("import-why.nobody"));
            }
            read.keptBy(read.code);
            return read;
        } catch (final JacksonException e) {
            throw other(
                    file,
                    TEXTS.of(
                            "import-why.line",
                            "line",
                            e.getLocation().getLineNr(),
                            "why",
                            e.getOriginalMessage()));
        } catch (final IllegalArgumentException | java.time.DateTimeException e) {
            throw other(file, String.valueOf(e.getMessage()));
        } catch (final IOException e) {
            throw other(file, TEXTS.of("import-why.unopened"));
        }
    }

    private static RecordProblem other(final Path file, final String why) {
        return new RecordProblem("import", "file", file.getFileName(), "why", why);
    }
}
