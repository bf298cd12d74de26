package wireworthy.evening.summary;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;
import wireworthy.texts.TextBundle;

/**
 * A sheet for next week: only what went wrong most, as many problems and copies as before, with new
 * numbers.
 *
 * @param why what it was chosen by, in words
 */
public record NextWeek(SheetPlan plan, String why) {
    /** A sheet on more would be no sheet on what was missed most. */
    private static final int MOST_SKILLS = 3;

    /** What was missed less than this share of what was missed most is left for later. */
    private static final double WORTH_REPEATING = 0.4;

    private static final int SLIPS_NAMED = 2;

    /** Of so many sheets the one is taken that repeats the fewest problems. */
    private static final int TRIED = 12;

    private static final Comparator<Map.Entry<Skill, Double>> MOST_FIRST =
            Map.Entry.<Skill, Double>comparingByValue(Comparator.reverseOrder())
                    .thenComparing(Map.Entry.comparingByKey());

    private static final TextBundle TEXTS = new TextBundle("evening");

    static NextWeek of(final Summary summary, final IntSupplier seeds) {
        for (final Why why : Why.values()) {
            final List<Skill> skills = most(why.missed(summary), summary.sheet());
            if (!skills.isEmpty()) {
                return new NextWeek(plan(summary.sheet(), skills, seeds), why.say(summary, skills));
            }
        }
        final List<Skill> same =
                summary.sheet().templates().stream().map(Template::skill).distinct().toList();
        return new NextWeek(plan(summary.sheet(), same, seeds), TEXTS.of("next.none"));
    }

    /** What a skill was chosen by, the weightiest first. */
    private enum Why {
        WRONG {
            @Override
            Map<Skill, Double> missed(final Summary summary) {
                return summary.wrongAt();
            }

            @Override
            String say(final Summary summary, final List<Skill> skills) {
                final String slips = slips(summary, skills);
                return slips.isEmpty()
                        ? TEXTS.of("next.wrong", "skills", words(skills))
                        : TEXTS.of("next.slips", "skills", words(skills), "slips", slips);
            }
        },
        OPEN {
            @Override
            Map<Skill, Double> missed(final Summary summary) {
                return summary.bySkill().entrySet().stream()
                        .collect(
                                Collectors.toMap(
                                        Map.Entry::getKey,
                                        each -> (double) each.getValue().open()));
            }

            @Override
            String say(final Summary summary, final List<Skill> skills) {
                return TEXTS.of("next.open", "skills", words(skills));
            }
        };

        abstract Map<Skill, Double> missed(Summary summary);

        abstract String say(Summary summary, List<Skill> skills);
    }

    private static List<Skill> most(final Map<Skill, Double> missed, final Sheet sheet) {
        final Map<Skill, Integer> fitting =
                sheet.fitting(sheet.likewise(EnumSet.allOf(Skill.class)));
        final List<Map.Entry<Skill, Double>> sorted =
                missed.entrySet().stream()
                        .filter(each -> each.getValue() > 0)
                        .filter(each -> fitting.getOrDefault(each.getKey(), 0) > 0)
                        .sorted(MOST_FIRST)
                        .toList();
        return sorted.stream()
                .filter(each -> each.getValue() >= WORTH_REPEATING * sorted.get(0).getValue())
                .limit(Math.min(MOST_SKILLS, sheet.problems()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static SheetPlan plan(
            final Sheet sheet, final List<Skill> skills, final IntSupplier seeds) {
        final Pick pick = sheet.likewise(Set.copyOf(skills));
        final SheetPlan now = sheet.plan();
        return Stream.generate(seeds::getAsInt)
                .limit(TRIED)
                .map(
                        seed ->
                                new SheetPlan(
                                        pick,
                                        now.ownNumbers(),
                                        now.learners(),
                                        now.ownBanks(),
                                        seed))
                .min(Comparator.comparingInt(plan -> repeated(sheet, plan)))
                .orElseThrow();
    }

    private static int repeated(final Sheet sheet, final SheetPlan plan) {
        final Set<Template> again = new HashSet<>(sheet.other(plan).templates());
        again.retainAll(sheet.templates());
        return again.size();
    }

    private static String words(final List<Skill> skills) {
        return skills.stream().map(Skill::words).collect(Collectors.joining(", "));
    }

    /** The commonest made on these skills, each with how many answers it may explain. */
    private static String slips(final Summary summary, final List<Skill> skills) {
        return summary.slips().stream()
                .filter(each -> each.skills().stream().anyMatch(skills::contains))
                .limit(SLIPS_NAMED)
                .map(each -> TEXTS.of("next.slip", "slip", each.words(), "count", each.answers()))
                .collect(Collectors.joining(", "));
    }
}
