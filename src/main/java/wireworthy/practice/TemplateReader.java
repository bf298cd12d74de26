package wireworthy.practice;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;
import wireworthy.working.Unworkable;

/** Reads one template and tries it once, so that a broken one is told before anyone meets it. */
final class TemplateReader {
    private static final int LONGEST_TEXT = 2000;
    private static final int LONGEST_NAME = 120;
    private static final Set<String> ENTRIES =
            Stream.concat(
                            Stream.of("id", "skill", "difficulty", "text", "drawing"),
                            TaskReader.ENTRIES.stream())
                    .collect(Collectors.toSet());

    private final String bank;
    private final int version;
    private final Consumer<Template> trial;

    TemplateReader(final String bank, final int version, final Consumer<Template> trial) {
        this.bank = bank;
        this.version = version;
        this.trial = trial;
    }

    /**
     * Reads one.
     *
     * @param foreign whether its texts are not in the language in use
     */
    Template read(final Entry entry, final boolean foreign) {
        entry.only(ENTRIES);
        final Template template =
                new Template(
                        bank,
                        version,
                        entry.at("id").id(),
                        skill(entry.at("skill")),
                        entry.at("difficulty").whole(-1, 1),
                        entry.at("text").text(LONGEST_TEXT),
                        drawing(entry),
                        given(entry),
                        TaskReader.read(entry),
                        foreign);
        placeholders(entry, template);
        tried(entry, template);
        return template;
    }

    private static Skill skill(final Entry entry) {
        final String id = entry.text(LONGEST_NAME);
        return Arrays.stream(Skill.values())
                .filter(skill -> skill.id().equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                entry.unfit(
                                        "no skill is called \"" + Entry.shortened(id) + "\"",
                                        "Write one of " + skills()));
    }

    private static String skills() {
        return Arrays.stream(Skill.values()).map(Skill::id).collect(Collectors.joining(", "));
    }

    private static Map<String, Given> given(final Entry template) {
        return template.has("kind") && !template.has("given")
                ? Map.of()
                : GivenReader.all(template.at("given"));
    }

    /** What stands in no circuit of its own needs no drawing. */
    private static Drawing drawing(final Entry template) {
        return template.has("kind") && !template.has("drawing")
                ? Drawing.NONE
                : loadDrawn(template.at("drawing"));
    }

    private static Drawing loadDrawn(final Entry entry) {
        final String id = entry.text(LONGEST_NAME);
        final String known =
                Arrays.stream(Drawing.values()).map(Drawing::id).collect(Collectors.joining(", "));
        return Drawing.of(id)
                .orElseThrow(
                        () ->
                                entry.unfit(
                                        "no drawing is called \"" + Entry.shortened(id) + "\"",
                                        "Write one of " + known));
    }

    /** Each placeholder stands for something, and no drawn number is kept from the learner. */
    private static void placeholders(final Entry entry, final Template template) {
        final Set<String> mentioned = new HashSet<>(mentioned(entry.at("text"), template));
        if (entry.has("ask")) {
            mentioned.addAll(mentioned(entry.at("ask"), template));
        }
        template.task().texts().forEach(t -> mentioned.addAll(mentioned(entry, t, template)));
        template.mentionable()
                .filter(each -> !(each.getValue() instanceof Given.Fixed))
                .filter(each -> !mentioned.contains(each.getKey()))
                .findFirst()
                .ifPresent(
                        each -> {
                            throw entry.at("text")
                                    .unfit(
                                            "the drawn " + each.getKey() + " is not in the text",
                                            "Put {" + each.getKey() + "} where it belongs");
                        });
    }

    private static Set<String> mentioned(final Entry entry, final Template template) {
        return mentioned(entry, entry.text(LONGEST_TEXT), template);
    }

    /** The givens that a text speaks of. */
    private static Set<String> mentioned(
            final Entry entry, final String text, final Template template) {
        final Set<String> known =
                template.mentionable().map(each -> each.getKey()).collect(Collectors.toSet());
        final Set<String> mentioned = Drawn.given(text);
        mentioned.stream()
                .filter(name -> !known.contains(name))
                .findFirst()
                .ifPresent(name -> refuse(entry, "{" + name + "}"));
        Drawn.workedNames(text).stream()
                .filter(name -> Quantity.of(name).filter(Quantity::numeric).isEmpty())
                .findFirst()
                .ifPresent(name -> refuse(entry, "{=" + name + "}"));
        return mentioned;
    }

    private static void refuse(final Entry entry, final String placeholder) {
        throw entry.unfit(
                placeholder
                        + " stands for no "
                        + (placeholder.contains("=") ? "quantity" : "given"),
                "Name a given such as {section} or {1.power}, or a worked quantity such as"
                        + " {=drop}");
    }

    private void tried(final Entry entry, final Template template) {
        try {
            trial.accept(template);
        } catch (final Unworkable e) {
            throw new Unfit(
                    entry.pointer() + "/" + pointer(e.where()),
                    "this can't be worked: " + e.what(),
                    "Change what is given or what is asked");
        }
    }

    /** {@code given.loads[0].power} as the end of a JSON pointer. */
    private static String pointer(final String where) {
        return where.replace("[", "/").replace("]", "").replace('.', '/');
    }
}
