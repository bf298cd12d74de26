package wireworthy.evening.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.practice.SplitMix;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;
import wireworthy.texts.TextBundle;

/**
 * A sheet for next week: only what went wrong most, as many problems and copies as before, with new
 * numbers, and nothing that this sheet did not ask for.
 */
public record NextWeek(SheetPlan plan, ChosenFor chosenFor) {
    /** A sheet on more would be no sheet on what was missed most. */
    private static final int MOST_SKILLS = 3;

    /** What was missed less than this share of what was missed most is left for later. */
    private static final double WORTH_REPEATING = 0.4;

    private static final int SLIPS_NAMED = 2;

    /** Of so many sheets one is taken where they are drawn by lot. */
    private static final int TRIED = 60;

    private static final TextBundle TEXTS = new TextBundle("evening");

    static NextWeek of(final Summary summary, final IntSupplier seeds) {
        final Sheet sheet = summary.sheet();
        final Map<Skill, List<Template>> shown =
                sheet.shown().fitting(sheet.likewise(EnumSet.allOf(Skill.class))).stream()
                        .collect(Collectors.groupingBy(Template::skill));
        for (final Why why : Why.values()) {
            final List<Skill> skills = most(summary, why, shown.keySet());
            if (!skills.isEmpty()) {
                return new NextWeek(
                        plan(sheet, skills, shown, seeds), new ChosenFor(why.say(summary, skills)));
            }
        }
        final List<Skill> same =
                sheet.templates().stream().map(Template::skill).distinct().toList();
        return new NextWeek(plan(sheet, same, shown, seeds), new ChosenFor(TEXTS.of("next.none")));
    }

    /** What a skill was chosen by, the weightiest first. */
    private enum Why {
        WRONG {
            @Override
            double share(final Missed skill) {
                return skill.wrongShare();
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
            double share(final Missed skill) {
                return skill.share();
            }

            @Override
            String say(final Summary summary, final List<Skill> skills) {
                return TEXTS.of("next.open", "skills", words(skills));
            }
        };

        /** Of the answers that a skill was asked for in. */
        abstract double share(Missed skill);

        abstract String say(Summary summary, List<Skill> skills);
    }

    /** The head of the list of skills that stands in the summary, in its order. */
    private static List<Skill> most(final Summary summary, final Why why, final Set<Skill> shown) {
        final Map<Skill, Double> missed = new LinkedHashMap<>();
        summary.bySkill()
                .forEach(
                        (skill, counted) -> {
                            if (why.share(counted) > 0 && shown.contains(skill)) {
                                missed.put(skill, why.share(counted));
                            }
                        });
        final double most = missed.values().stream().findFirst().orElse(0.0);
        return missed.keySet().stream()
                .filter(skill -> missed.getOrDefault(skill, 0.0) >= WORTH_REPEATING * most)
                .limit(Math.min(MOST_SKILLS, summary.sheet().problems()))
                .toList();
    }

    /** Problem by problem of what was shown; where those are too many for a mark, by lot. */
    private static SheetPlan plan(
            final Sheet sheet,
            final List<Skill> skills,
            final Map<Skill, List<Template>> shown,
            final IntSupplier seeds) {
        final SheetPlan picked = oneByOne(sheet, skills, shown, seeds.getAsInt());
        return canBeMade(sheet, picked) ? picked : byLot(sheet, skills, shown, seeds);
    }

    /** In turn of each skill, the problems of this week last. */
    private static SheetPlan oneByOne(
            final Sheet sheet,
            final List<Skill> skills,
            final Map<Skill, List<Template>> shown,
            final int seed) {
        final SplitMix lots = SplitMix.of("next-week/" + seed);
        final List<List<Template>> turns =
                skills.stream().map(skill -> newestFirst(shown, skill, sheet, lots)).toList();
        final List<String> ids = new ArrayList<>();
        for (int i = 0; i < sheet.problems(); i++) {
            final List<Template> turn = turns.get(i % turns.size());
            ids.add(turn.get(i / turns.size() % turn.size()).fullId());
        }
        return plan(sheet, new Pick.ByTemplates(ids), seed);
    }

    private static List<Template> newestFirst(
            final Map<Skill, List<Template>> shown,
            final Skill skill,
            final Sheet sheet,
            final SplitMix lots) {
        return lots.shuffled(shown.getOrDefault(skill, sheet.templates())).stream()
                .sorted(Comparator.comparing(each -> sheet.templates().contains(each)))
                .toList();
    }

    /** Of the sheets that are tried the one that asks least of what was not shown. */
    private static SheetPlan byLot(
            final Sheet sheet,
            final List<Skill> skills,
            final Map<Skill, List<Template>> shown,
            final IntSupplier seeds) {
        final Pick pick = sheet.likewise(Set.copyOf(skills));
        return Stream.generate(seeds::getAsInt)
                .limit(TRIED)
                .map(seed -> plan(sheet, pick, seed))
                .min(
                        Comparator.comparingLong(
                                        (SheetPlan each) -> notShown(sheet.other(each), shown))
                                .thenComparingInt(each -> repeated(sheet, each)))
                .orElseThrow();
    }

    private static SheetPlan plan(final Sheet sheet, final Pick pick, final int seed) {
        final SheetPlan now = sheet.plan();
        return new SheetPlan(pick, now.ownNumbers(), now.learners(), now.ownBanks(), seed);
    }

    private static long notShown(final Sheet sheet, final Map<Skill, List<Template>> shown) {
        return sheet.templates().stream()
                .filter(each -> !shown.getOrDefault(each.skill(), List.of()).contains(each))
                .count();
    }

    /** A mark holds only so many problems picked one by one. */
    private static boolean canBeMade(final Sheet sheet, final SheetPlan plan) {
        try {
            sheet.other(plan);
            return true;
        } catch (final EveningProblem e) {
            return false;
        }
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
