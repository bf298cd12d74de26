package wireworthy.lessons;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wireworthy.rules.Skill;

/** Reads the front matter of a lesson; what is broken in it is made up from the file's name. */
final class FrontMatter {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+){0,12}");
    private static final List<String> KEYS =
            List.of("id", "title", "skills", "builds-on", "reviewed");
    private static final int LONGEST_TITLE = 80;

    private final LessonText text;
    private final List<LessonProblem> problems;

    private FrontMatter(final LessonText text, final List<LessonProblem> problems) {
        this.text = text;
        this.problems = problems;
    }

    /** Reads it, adding what is wrong with it to the problems. */
    static LessonHeading read(final LessonText text, final List<LessonProblem> problems) {
        return new FrontMatter(text, problems).heading();
    }

    private LessonHeading heading() {
        final Yaml.Keys keys = or(new Yaml.Keys(1, Map.of()), this::keys);
        if (keys.entries().isEmpty()) {
            return new LessonHeading(
                    idByName(), titleByName(), List.of(), List.of(), false, file());
        }
        or(keys, () -> keys.only(KEYS));
        return new LessonHeading(
                or(idByName(), () -> id(keys.text("id"), keys.at("id").line())),
                or(titleByName(), () -> title(keys)),
                or(List.of(), () -> skills(keys)),
                or(List.of(), () -> buildsOn(keys)),
                or(false, () -> reviewed(keys)),
                file());
    }

    private String file() {
        return text.file();
    }

    private <T> T or(final T otherwise, final Supplier<T> reading) {
        try {
            return reading.get();
        } catch (final Refused e) {
            problems.add(e.in(file()));
            return otherwise;
        }
    }

    private Yaml.Keys keys() {
        if (text.frontMatter().isBlank()) {
            throw new Refused(
                    1,
                    "The lesson has no front matter",
                    "Begin the file with a line ---, then id, title and skills, then a line ---.");
        }
        return YamlReader.read(text.frontMatter(), 1);
    }

    private static String id(final String id, final int line) {
        if (!ID.matcher(id).matches()) {
            throw new Refused(
                    line,
                    "\"" + Excerpt.of(id) + "\" is no id",
                    "Write small letters, digits and hyphens, such as voltage-drop.");
        }
        return id;
    }

    private static String title(final Yaml.Keys keys) {
        final String title = keys.text("title");
        if (title.length() > LONGEST_TITLE) {
            throw new Refused(
                    keys.at("title").line(),
                    "The title is longer than " + LONGEST_TITLE + " characters",
                    "Shorten it.");
        }
        return title;
    }

    private static List<Skill> skills(final Yaml.Keys keys) {
        return Yaml.items("skills", keys.at("skills")).stream().map(FrontMatter::skill).toList();
    }

    private static Skill skill(final Yaml item) {
        final String id = Yaml.text("skills", item);
        return Stream.of(Skill.values())
                .filter(skill -> skill.id().equals(id))
                .findFirst()
                .orElseThrow(() -> noSkill(id, item.line()));
    }

    private static Refused noSkill(final String id, final int line) {
        final List<String> known = Stream.of(Skill.values()).map(Skill::id).toList();
        return new Refused(
                line,
                "No skill is called \"" + Excerpt.of(id) + "\"",
                "The skills are " + String.join(", ", known) + ".");
    }

    private static List<String> buildsOn(final Yaml.Keys keys) {
        if (!keys.has("builds-on")) {
            return List.of();
        }
        return Yaml.items("builds-on", keys.at("builds-on")).stream()
                .map(item -> id(Yaml.text("builds-on", item), item.line()))
                .toList();
    }

    private static boolean reviewed(final Yaml.Keys keys) {
        return switch (keys.text("reviewed")) {
            case "true" -> true;
            case "false" -> false;
            default ->
                    throw new Refused(
                            keys.at("reviewed").line(),
                            "\"reviewed\" is true or false",
                            "Write false until a qualified person has reviewed the lesson.");
        };
    }

    private String idByName() {
        final String name = file().replaceFirst("\\.md$", "").toLowerCase(Locale.ROOT);
        final String id = name.replaceFirst("^[0-9]+-", "").replaceAll("[^a-z0-9]+", "-");
        return Optional.of(id).filter(each -> ID.matcher(each).matches()).orElse("lesson");
    }

    private String titleByName() {
        return file().replaceFirst("\\.md$", "");
    }
}
