package wireworthy.evening.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.wish.Wish;
import wireworthy.practice.ContentFile;
import wireworthy.texts.TextBundle;

/** Reads the file of an evening: a title, a line that says what to print, a plan. */
final class EveningReader {
    private static final TextBundle TEXTS = new TextBundle("evening");
    private static final int MOST_OPEN = 60;
    private static final String TITLE = "# ";
    private static final Pattern LESSON = Pattern.compile("`lesson:([^`]*)`");
    private static final Parser MARKDOWN =
            Parser.builder()
                    .extensions(List.of(TablesExtension.create()))
                    .maxOpenBlockParsers(MOST_OPEN)
                    .maxInlineNesting(MOST_OPEN)
                    .build();

    private final String file;
    private final Map<String, String> lessons;
    private final List<String> plan = new ArrayList<>();
    private Optional<String> title = Optional.empty();
    private Optional<Wish> wish = Optional.empty();

    private EveningReader(final String file, final Map<String, String> lessons) {
        this.file = file;
        this.lessons = lessons;
    }

    /**
     * Reads it.
     *
     * @param lessons titles by id
     * @throws EveningProblem with file and line where it can't be used
     */
    static Evening read(final ContentFile.Text text, final Map<String, String> lessons) {
        final EveningReader reader = new EveningReader(text.name(), lessons);
        final List<String> lines = text.text().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            try {
                reader.line(lines.get(i));
            } catch (final EveningProblem e) {
                throw reader.at(i + 1, e);
            }
        }
        return reader.evening();
    }

    private EveningProblem at(final int line, final EveningProblem problem) {
        return new EveningProblem(
                TEXTS.of("course.at", "file", file, "line", line, "what", problem.what()),
                problem.remedy());
    }

    private void line(final String line) {
        if (title.isEmpty() && line.startsWith(TITLE)) {
            title = Optional.of(line.substring(TITLE.length()).strip());
        } else if (line.strip().startsWith(PrintLine.BEGINS) && line.startsWith("    ")) {
            wish = Optional.of(PrintLine.read(line));
            plan.add(TEXTS.of("course.printed"));
        } else {
            plan.add(LESSON.matcher(line).replaceAll(this::link).replace("`", ""));
        }
    }

    private String link(final MatchResult found) {
        final String id = found.group(1);
        if (!lessons.containsKey(id)) {
            throw new EveningProblem(
                    TEXTS.of("course.no-lesson", "id", id), TEXTS.of("course.no-lesson.do"));
        }
        return "[" + lessons.get(id).replaceAll("[\\[\\]\\\\$]", " ") + "](lesson:" + id + ")";
    }

    private Evening evening() {
        final String named =
                title.orElseThrow(
                        () ->
                                at(
                                        1,
                                        new EveningProblem(
                                                TEXTS.of("course.no-title"),
                                                TEXTS.of("course.no-title.do"))));
        final Wish wanted =
                wish.orElseThrow(
                        () ->
                                at(
                                        1,
                                        new EveningProblem(
                                                TEXTS.of("course.no-print"),
                                                TEXTS.of("course.no-print.do"))));
        return new Evening(file, named, wanted, MARKDOWN.parse(String.join("\n", plan)));
    }
}
