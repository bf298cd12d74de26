package wireworthy.evening.wish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wireworthy.evening.Difficulty;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.SystemVoltage;
import wireworthy.practice.Exercise;
import wireworthy.rules.Skill;
import wireworthy.texts.TextBundle;

/**
 * What comes of a wish.
 *
 * @param fitting how many templates of each skill fit; empty where that can't be said
 * @param sheet the sheet, where it can be made
 * @param first the problems of the first learner
 * @param without the chosen skills that have nothing that fits
 * @param trouble why it can't be made and what to change; empty where it can
 */
public record Made(
        Map<Skill, Integer> fitting,
        Optional<Sheet> sheet,
        List<Exercise> first,
        List<Skill> without,
        String trouble) {
    private static final int SAID_ONE_BY_ONE = 2;
    private static final TextBundle TEXTS = new TextBundle("evening");

    public Made {
        fitting = Map.copyOf(fitting);
        first = List.copyOf(first);
        without = List.copyOf(without);
    }

    /** Tries it. */
    public static Made of(final Wish wish, final Shelf shelf) {
        final Map<Skill, Integer> fitting = fitting(wish.wanted(), shelf);
        final List<Skill> without = without(wish.wanted(), fitting);
        if (!without.isEmpty()) {
            return refused(fitting, without, none(wish.wanted(), without, shelf));
        }
        try {
            final Sheet sheet = wish.sheet(shelf);
            return new Made(fitting, Optional.of(sheet), sheet.exercises(1), List.of(), "");
        } catch (final EveningProblem e) {
            return refused(fitting, without, e.text());
        }
    }

    private static Made refused(
            final Map<Skill, Integer> fitting, final List<Skill> without, final String trouble) {
        return new Made(fitting, Optional.empty(), List.of(), without, trouble);
    }

    private static Map<Skill, Integer> fitting(final Wanted wanted, final Shelf shelf) {
        try {
            return shelf.fitting(wanted.ofAllSkills(), wanted.ownBanks());
        } catch (final EveningProblem e) {
            return new EnumMap<>(Skill.class);
        }
    }

    private static List<Skill> without(final Wanted wanted, final Map<Skill, Integer> fitting) {
        return wanted.oneByOne() || fitting.isEmpty()
                ? List.of()
                : Arrays.stream(Skill.values())
                        .filter(wanted.skills()::contains)
                        .filter(skill -> fitting.getOrDefault(skill, 0) == 0)
                        .toList();
    }

    /**
     * Names what of the choice stands in the way, by trying the skill with each part of it open.
     */
    private static String none(final Wanted wanted, final List<Skill> without, final Shelf shelf) {
        if (without.size() > SAID_ONE_BY_ONE) {
            return TEXTS.of(
                    "made.none.several",
                    "skills",
                    String.join(", ", without.stream().map(Skill::words).toList()));
        }
        final List<String> said = new ArrayList<>();
        for (final Skill skill : without) {
            said.add(
                    TEXTS.of(
                            "made.none",
                            "skill",
                            skill.words(),
                            "ways",
                            String.join(TEXTS.of("made.or"), ways(wanted, skill, shelf))));
        }
        return String.join(" ", said);
    }

    private static List<String> ways(final Wanted wanted, final Skill skill, final Shelf shelf) {
        final List<String> ways = new ArrayList<>();
        if (helps(wanted.withDifficulties(EnumSet.allOf(Difficulty.class)), skill, shelf)) {
            ways.add(TEXTS.of("made.harder"));
        }
        if (helps(wanted.withSizes(Optional.empty()), skill, shelf)) {
            ways.add(TEXTS.of("made.sizes"));
        }
        if (helps(wanted.withVoltages(EnumSet.allOf(SystemVoltage.class)), skill, shelf)) {
            ways.add(TEXTS.of("made.volts"));
        }
        ways.add(TEXTS.of("made.leave-out"));
        return ways;
    }

    private static boolean helps(final Wanted wanted, final Skill skill, final Shelf shelf) {
        final Pick.BySkills by = wanted.ofAllSkills();
        return shelf.fitting(by, wanted.ownBanks()).getOrDefault(skill, 0) > 0;
    }

    /** How many different kinds of problem the sheet has. */
    public int kinds() {
        return sheet.map(it -> new HashSet<>(it.templates()).size()).orElse(0);
    }

    /** From how many kinds it could be made. */
    public int choosable(final Wanted wanted) {
        return wanted.oneByOne()
                ? new HashSet<>(wanted.templates()).size()
                : wanted.skills().stream().mapToInt(it -> fitting.getOrDefault(it, 0)).sum();
    }
}
