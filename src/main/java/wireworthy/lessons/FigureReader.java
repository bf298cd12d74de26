package wireworthy.lessons;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;

/** Reads the block of a live figure. */
final class FigureReader {
    private static final List<String> RANGE = List.of("from", "to", "step", "start");
    private static final List<String> CHOICE = List.of("of", "start");
    private static final List<String> LOAD = List.of("name", "power", "count", "on");
    private static final List<String> TIMED = List.of("hours", "share-of-time");
    private static final double SECONDS_A_DAY = 86_400;
    private static final int MOST_STEPS = 2000;
    private static final int MOST_CHOICES = 12;
    private static final int MOST_LOADS = 8;
    private static final int MOST_OF_ONE = 100;
    private static final int LONGEST_NAME = 40;

    private FigureReader() {}

    /**
     * Reads the keys of a figure block.
     *
     * @throws Refused naming the line
     */
    static Figure read(final Yaml.Keys keys) {
        final FigureKind kind = kind(keys);
        final List<String> known = new ArrayList<>(List.of("id", "try"));
        kind.options().forEach(option -> known.add(option.id()));
        keys.only(known);
        final Map<FigureOption, Handle> handles = new LinkedHashMap<>();
        final Set<FigureOption> open = open(kind, keys);
        kind.options()
                .forEach(
                        option ->
                                handles.put(
                                        option,
                                        open.contains(option)
                                                ? option.usual().orElseThrow()
                                                : handle(kind, option, keys)));
        CablesInTable.check(handles, keys);
        return new Figure(kind, Collections.unmodifiableMap(handles), keys.text("try"), open);
    }

    private static Set<FigureOption> open(final FigureKind kind, final Yaml.Keys keys) {
        return kind.options().stream()
                .filter(option -> !keys.has(option.id()) && option.usual().isPresent())
                .collect(Collectors.toUnmodifiableSet());
    }

    private static FigureKind kind(final Yaml.Keys keys) {
        final String id = keys.text("id");
        return FigureKind.of(id)
                .orElseThrow(
                        () ->
                                new Refused(
                                        keys.at("id").line(),
                                        "No figure is called \"" + Excerpt.of(id) + "\"",
                                        "There are " + String.join(", ", FigureKind.ids()) + "."));
    }

    private static Handle handle(
            final FigureKind kind, final FigureOption option, final Yaml.Keys keys) {
        final Yaml value = keys.at(option.id());
        if (option == FigureOption.LOADS) {
            return switches(
                    Yaml.items(option.id(), value), value.line(), kind == FigureKind.DAYS_ENERGY);
        }
        if (option.yesOrNo()) {
            return new Handle.YesOrNo(yes(option.id(), keys));
        }
        if (value instanceof Yaml.Text text) {
            return fixed(option, text);
        }
        final Yaml.Keys set = Yaml.keys(option.id(), value);
        return set.has("of") ? choice(option, set) : range(option, set);
    }

    private static Handle fixed(final FigureOption option, final Yaml.Text text) {
        if (!option.quantity().numeric()) {
            return new Handle.Named(option.quantity(), Given.name(option.quantity(), text));
        }
        final Given.Amount number = number(option, text);
        return new Handle.Fixed(number.quantity(), number.value());
    }

    private static Given.Amount number(
            final FigureOption option, final Yaml.Keys set, final String key) {
        if (!option.quantity().numeric()) {
            throw new Refused(
                    set.line(), "\"" + option.id() + "\" is one name", "Write the name alone.");
        }
        return number(option, new Yaml.Text(set.at(key).line(), set.text(key)));
    }

    private static Given.Amount number(final FigureOption option, final Yaml.Text text) {
        if (option.mayBeNone() && Given.none(option.quantity(), text)) {
            return new Given.Amount(option.quantity(), 0);
        }
        final Given.Amount number = Given.number(option.quantity(), text);
        if (number.value() > option.most()) {
            throw new Refused(
                    text.line(),
                    "This is more of \"" + option.id() + "\" than can be drawn",
                    "Use at most %.0f.".formatted(option.most()));
        }
        return number;
    }

    private static Handle range(final FigureOption option, final Yaml.Keys set) {
        set.only(RANGE);
        final Given.Amount start = number(option, set, "start");
        final double from = number(option, set, "from").value();
        final double to = number(option, set, "to").value();
        final double step = number(option, set, "step").value();
        if (!(from <= start.value() && start.value() <= to && from < to)) {
            throw new Refused(
                    set.line(),
                    "The range of \"" + option.id() + "\" does not hold its start",
                    "Let from be below to, and start between the two.");
        }
        if ((to - from) / step > MOST_STEPS) {
            throw new Refused(
                    set.line(),
                    "The range of \"" + option.id() + "\" has too many steps",
                    "Use at most " + MOST_STEPS + " steps.");
        }
        return new Handle.Range(start.quantity(), from, to, step, start.value());
    }

    private static Handle choice(final FigureOption option, final Yaml.Keys set) {
        set.only(CHOICE);
        final Given.Amount start = number(option, set, "start");
        final List<Double> values =
                Yaml.items("of", set.at("of")).stream()
                        .map(item -> new Yaml.Text(item.line(), Yaml.text("of", item)))
                        .map(text -> number(option, text).value())
                        .toList();
        if (!values.contains(start.value()) || values.size() > MOST_CHOICES) {
            throw new Refused(
                    set.line(),
                    "The start of \"" + option.id() + "\" is not among its values",
                    "Give at most " + MOST_CHOICES + " values and start with one of them.");
        }
        return new Handle.Choice(start.quantity(), values, start.value());
    }

    private static Handle switches(final List<Yaml> loads, final int line, final boolean timed) {
        if (loads.isEmpty() || loads.size() > MOST_LOADS) {
            throw new Refused(line, "A feed has 1 to " + MOST_LOADS + " loads", "Give as many.");
        }
        return new Handle.Switches(
                loads.stream().map(load -> load(Yaml.keys("loads", load), timed)).toList());
    }

    private static Handle.Load load(final Yaml.Keys set, final boolean timed) {
        set.only(timed ? Stream.concat(LOAD.stream(), TIMED.stream()).toList() : LOAD);
        final String name = set.text("name");
        if (name.length() > LONGEST_NAME) {
            throw new Refused(set.line(), "This name is too long", "Use at most 40 characters.");
        }
        return new Handle.Load(
                name,
                number(Quantity.LOAD_POWER, set, "power"),
                count(set),
                yes("on", set),
                timed ? OptionalDouble.of(share(set)) : OptionalDouble.empty());
    }

    private static double number(final Quantity quantity, final Yaml.Keys set, final String key) {
        return Given.number(quantity, new Yaml.Text(set.at(key).line(), set.text(key))).value();
    }

    private static double share(final Yaml.Keys set) {
        if (set.has("share-of-time")) {
            return number(Quantity.USABLE_SHARE, set, "share-of-time");
        }
        final double share = number(Quantity.TIME, set, "hours") / SECONDS_A_DAY;
        if (share > 1) {
            throw new Refused(set.at("hours").line(), "A day has 24 hours", "Give at most 24 h.");
        }
        return share;
    }

    private static int count(final Yaml.Keys set) {
        if (!set.has("count")) {
            return 1;
        }
        final double count = number(Quantity.LOAD_COUNT, set, "count");
        if (count > MOST_OF_ONE) {
            throw new Refused(
                    set.at("count").line(), "These are too many", "Use at most 100 of one load.");
        }
        return (int) count;
    }

    private static boolean yes(final String key, final Yaml.Keys set) {
        return switch (set.text(key)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default ->
                    throw new Refused(
                            set.at(key).line(), "\"" + key + "\" is yes or no", "Write yes or no.");
        };
    }
}
