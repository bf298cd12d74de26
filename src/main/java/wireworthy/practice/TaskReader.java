package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.rules.Quantity;
import wireworthy.rules.SlipCatalogue;

/** Reads what a template asks. */
final class TaskReader {
    /** The longest question, why or step. */
    static final int LONGEST = 400;

    /** The entries that speak of the task. */
    static final Set<String> ENTRIES =
            Set.of("kind", "ask", "find", "parts", "options", "steps", "given");

    private static final int MOST_PARTS = 6;
    private static final int MOST_OPTIONS = 6;
    private static final int MOST_STAGES = 7;
    private static final int FEWEST_STAGES = 3;
    private static final String KINDS = "Write one of choice, ordering, estimate, or leave it out";

    private TaskReader() {}

    static Task read(final Entry template) {
        if (!template.has("kind")) {
            return figures(template);
        }
        final Entry kind = template.at("kind");
        return switch (kind.text(LONGEST)) {
            case "choice" -> choice(template);
            case "ordering" -> order(template);
            case "estimate" -> new Task.Estimate(ask(template), find(template));
            default -> throw kind.unfit("no kind is called this", KINDS);
        };
    }

    private static String ask(final Entry entry) {
        return entry.at("ask").text(LONGEST);
    }

    private static Task figures(final Entry template) {
        if (!template.has("parts")) {
            return Task.Figures.one(ask(template), find(template));
        }
        final List<Task.Part> parts = new ArrayList<>();
        for (final Entry part : several(template.at("parts"), 2, MOST_PARTS)) {
            part.only(Set.of("ask", "find"));
            parts.add(new Task.Part(ask(part), find(part)));
        }
        return new Task.Figures(parts);
    }

    private static Task choice(final Entry template) {
        final List<Task.Option> options = new ArrayList<>();
        for (final Entry option : several(template.at("options"), 2, MOST_OPTIONS)) {
            options.add(option(option));
        }
        final List<RightWhen> rights = options.stream().map(Task.Option::right).toList();
        final boolean fixed = rights.stream().allMatch(RightWhen.Always.class::isInstance);
        if (fixed && rights.stream().filter(new RightWhen.Always(true)::equals).count() != 1) {
            throw template.at("options")
                    .unfit("not exactly one option is right", "Give one of them \"right\": true");
        }
        return new Task.Choose(ask(template), options);
    }

    private static Task.Option option(final Entry option) {
        option.only(Set.of("text", "right", "right-if", "why", "slip"));
        return new Task.Option(
                option.at("text").text(LONGEST),
                right(option),
                option.at("why").text(LONGEST),
                option.has("slip") ? Optional.of(slip(option.at("slip"))) : Optional.empty());
    }

    private static RightWhen right(final Entry option) {
        if (option.has("right-if")) {
            final Entry condition = option.at("right-if");
            return RightWhen.Compared.of(condition.text(LONGEST))
                    .orElseThrow(
                            () ->
                                    condition.unfit(
                                            "this compares no two quantities",
                                            "Write \"section-for-drop > section-for-ampacity\""));
        }
        return new RightWhen.Always(option.has("right") && option.at("right").yes());
    }

    private static String slip(final Entry entry) {
        final String id = entry.text(LONGEST);
        if (!SlipCatalogue.has(id)) {
            throw entry.unfit(
                    "no slip is called \"" + Entry.shortened(id) + "\"",
                    "Take an id of the catalogue of slips, or leave it out");
        }
        return id;
    }

    private static Task order(final Entry template) {
        final List<Task.Stage> stages = new ArrayList<>();
        for (final Entry step : several(template.at("steps"), FEWEST_STAGES, MOST_STAGES)) {
            step.only(Set.of("text", "why"));
            stages.add(new Task.Stage(step.at("text").text(LONGEST), step.at("why").text(LONGEST)));
        }
        return new Task.Order(ask(template), stages);
    }

    private static List<Entry> several(final Entry list, final int fewest, final int most) {
        final List<Entry> entries = list.list(most);
        if (entries.size() < fewest) {
            throw list.unfit("fewer than " + fewest + " entries", "Add some");
        }
        return entries;
    }

    private static Quantity find(final Entry entry) {
        final Entry find = entry.at("find");
        final String id = find.text(LONGEST);
        return Quantity.of(id)
                .filter(Quantity::numeric)
                .orElseThrow(
                        () ->
                                find.unfit(
                                        "no quantity to find is called \""
                                                + Entry.shortened(id)
                                                + "\"",
                                        "Write an id such as \"load-current\""));
    }
}
