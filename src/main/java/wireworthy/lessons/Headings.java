package wireworthy.lessons;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import wireworthy.rules.Skill;

/**
 * The headings of the lessons that come with the program, as the build wrote them down: a line
 * each, its parts set apart by tabs. Without them the front matter is read, which takes longer.
 */
public final class Headings {
    private static final String RESOURCE = "/wireworthy/lessons/headings.tsv";
    private static final String TAB = "\t";
    private static final String COMMA = ",";

    private Headings() {}

    /** The headings as the build writes them down. */
    public static String written(final List<LessonHeading> headings) {
        final StringBuilder lines = new StringBuilder();
        headings.forEach(it -> lines.append(line(it)).append('\n'));
        return lines.toString();
    }

    private static String line(final LessonHeading it) {
        return String.join(
                TAB,
                it.file(),
                it.id(),
                it.title(),
                String.valueOf(it.reviewed()),
                String.join(COMMA, it.skills().stream().map(Skill::name).toList()),
                String.join(COMMA, it.buildsOn()));
    }

    /** In the order of the lessons; none where the build has written none. */
    static List<LessonHeading> builtIn() {
        try (InputStream lines = Headings.class.getResourceAsStream(RESOURCE)) {
            return lines == null
                    ? List.of()
                    : read(new String(lines.readAllBytes(), StandardCharsets.UTF_8));
        } catch (final IOException unreadable) {
            return List.of();
        }
    }

    static List<LessonHeading> read(final String lines) {
        final List<LessonHeading> headings = new ArrayList<>();
        lines.lines().forEach(line -> headings.add(heading(line.split(TAB, -1))));
        return headings;
    }

    private static LessonHeading heading(final String... parts) {
        final List<Skill> skills = new ArrayList<>();
        for (final String name : items(parts[4])) {
            skills.add(Skill.valueOf(name));
        }
        return new LessonHeading(
                parts[1],
                parts[2],
                skills,
                items(parts[5]),
                Boolean.parseBoolean(parts[3]),
                parts[0]);
    }

    private static List<String> items(final String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(COMMA, -1));
    }
}
