package wireworthy.practice;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;
import wireworthy.working.Unworkable;

/** Reads one template and tries it once, so that a broken one is told before anyone meets it. */
final class TemplateReader {
    private static final int LONGEST_TEXT = 2000;
    private static final int LONGEST_ASK = 400;
    private static final Set<String> ENTRIES =
            Set.of("id", "skill", "difficulty", "text", "ask", "drawing", "given", "find");

    private final String bank;
    private final int version;
    private final Draw draw;

    TemplateReader(final String bank, final int version, final Draw draw) {
        this.bank = bank;
        this.version = version;
        this.draw = draw;
    }

    Template read(final Entry entry) {
        entry.only(ENTRIES);
        final Template template =
                new Template(
                        bank,
                        version,
                        entry.at("id").id(),
                        skill(entry.at("skill")),
                        entry.at("difficulty").whole(-1, 1),
                        entry.at("text").text(LONGEST_TEXT),
                        entry.at("ask").text(LONGEST_ASK),
                        drawing(entry.at("drawing")),
                        GivenReader.all(entry.at("given")),
                        find(entry.at("find")));
        placeholders(entry, template);
        tried(entry, template);
        return template;
    }

    private static Skill skill(final Entry entry) {
        final String id = entry.text(LONGEST_ASK);
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

    private static Drawing drawing(final Entry entry) {
        final String id = entry.text(LONGEST_ASK);
        final String known =
                Arrays.stream(Drawing.values()).map(Drawing::id).collect(Collectors.joining(", "));
        return Drawing.of(id)
                .orElseThrow(
                        () ->
                                entry.unfit(
                                        "no drawing is called \"" + Entry.shortened(id) + "\"",
                                        "Write one of " + known));
    }

    private static Quantity find(final Entry entry) {
        final String id = entry.text(LONGEST_ASK);
        return Quantity.of(id)
                .filter(Quantity::numeric)
                .orElseThrow(
                        () ->
                                entry.unfit(
                                        "no quantity to find is called \""
                                                + Entry.shortened(id)
                                                + "\"",
                                        "Write an id such as \"load-current\""));
    }

    /** Each placeholder stands for a given, and no drawn number is kept from the learner. */
    private static void placeholders(final Entry entry, final Template template) {
        final Set<String> known =
                template.mentionable().map(each -> each.getKey()).collect(Collectors.toSet());
        final Set<String> mentioned = new HashSet<>();
        for (final String key : new String[] {"text", "ask"}) {
            final Matcher matcher = Drawn.PLACEHOLDER.matcher(entry.at(key).text(LONGEST_TEXT));
            while (matcher.find()) {
                mentioned.add(matcher.group(1));
                if (!known.contains(matcher.group(1))) {
                    throw entry.at(key)
                            .unfit(
                                    "{" + matcher.group(1) + "} stands for no given",
                                    "Name a given, or a load's entry such as {1.power}");
                }
            }
        }
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

    private void tried(final Entry entry, final Template template) {
        try {
            draw.tryOut(template);
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
