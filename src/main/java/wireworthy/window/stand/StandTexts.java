package wireworthy.window.stand;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Collectors;
import wireworthy.practice.Prerequisites;
import wireworthy.practice.SkillState;
import wireworthy.rules.Skill;
import wireworthy.texts.TextBundle;

/** What is said of where one stands, from {@code texts/stand.properties}. */
public final class StandTexts {
    private static final TextBundle TEXTS = new TextBundle("stand");

    private StandTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    public static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }

    /** A day, such as "1 March 2026". */
    public static String day(final long day) {
        final LocalDate date = LocalDate.ofEpochDay(day);
        final String month = of("months").split(" ", -1)[date.getMonthValue() - 1];
        return of("day", "day", date.getDayOfMonth(), "month", month, "year", date.getYear());
    }

    /** All skills in one sentence: how many are in which state. */
    public static String summary(final Stand stand) {
        final var counts = stand.counts();
        final List<String> parts = new ArrayList<>();
        for (final SkillState state : EnumSet.allOf(SkillState.class)) {
            final long count = counts.getOrDefault(state, 0L);
            if (count > 0) {
                parts.add(count + "\u00a0" + state.words());
            }
        }
        return of("summary", "all", Skill.values().length, "counts", String.join(", ", parts));
    }

    /** What is to be said of a skill, a sentence each, the state first. */
    public static List<String> of(final SkillStand it, final long today) {
        final List<String> said = new ArrayList<>();
        said.add(state(it, today));
        if (it.stuck()) {
            said.add(of("stuck"));
        }
        if (it.holds()) {
            it.due().ifPresent(day -> said.add(due(day, today)));
        }
        it.last().ifPresent(day -> said.add(tries(it.tries(), day)));
        it.again().forEach(slip -> said.add(again(slip)));
        return said;
    }

    private static String tries(final int tries, final long last) {
        return of(tries == 1 ? "tries.one" : "tries", "count", tries, "day", day(last));
    }

    private static String again(final SlipAgain slip) {
        return of("again", "slip", slip.words(), "times", slip.times());
    }

    private static String state(final SkillStand it, final long today) {
        return switch (it.state()) {
            case UNTRIED -> of("untried");
            case LOOSE -> of("loose");
            case SNUG -> of("snug", "since", day(it.since().orElse(today)));
            case TIGHT -> of("tight", "since", day(it.since().orElse(today)));
            case DUE -> dueAgain(it, today);
            case WORKED_LOOSE -> workedLoose(it, today);
        };
    }

    private static String workedLoose(final SkillStand it, final long today) {
        return of("worked-loose", "since", day(it.since().orElse(today)));
    }

    private static String dueAgain(final SkillStand it, final long today) {
        final long due = it.due().orElse(today);
        return of(
                due < today ? "due-again" : "due-again.today",
                "since",
                day(it.since().orElse(today)),
                "due",
                day(due));
    }

    private static String due(final long due, final long today) {
        return of("due", "day", day(due), "in", in(due - today));
    }

    private static String in(final long days) {
        return days == 1 ? of("in-days.one") : of("in-days", "count", days);
    }

    /** What a skill stands on, and how that holds. */
    public static String standsOn(final Skill skill, final Stand stand) {
        final Collection<Skill> below = Prerequisites.of(skill);
        return below.isEmpty() ? of("on.nothing") : of("on", "skills", named(below, stand));
    }

    /** What stands on a skill; empty where nothing does. */
    public static String neededFor(final Skill skill) {
        final List<Skill> above = Stand.on(skill);
        return above.isEmpty()
                ? ""
                : of(
                        "needed-for",
                        "skills",
                        above.stream().map(Skill::words).collect(Collectors.joining(", ")));
    }

    private static String named(final Collection<Skill> skills, final Stand stand) {
        return skills.stream()
                .map(each -> each.words() + " (" + stand.of(each).state().words() + ")")
                .collect(Collectors.joining(", "));
    }

    /** What the plot shows, in words. */
    public static String held(final Stand stand) {
        if (stand.held().isEmpty()) {
            return of("held.none");
        }
        final Held first = stand.held().get(0);
        final Held last = stand.held().get(stand.held().size() - 1);
        return of(
                "held",
                "first",
                day(first.day()),
                "last",
                day(last.day()),
                "then",
                last.skills(),
                "now",
                stand.holding());
    }

    /** That the clock stands before the last answer, and what comes of it. */
    public static String clock(final long today, final long last) {
        return of("clock", "today", day(today), "last", day(last));
    }
}
