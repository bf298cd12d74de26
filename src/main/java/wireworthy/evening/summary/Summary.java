package wireworthy.evening.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.handin.HandIn;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;

/**
 * What a group stumbled over.
 *
 * @param problems in the order of the sheet
 * @param skills what was missed most first
 * @param slips the commonest first
 * @param help in the order of the sheet
 */
public record Summary(
        Sheet sheet,
        int handedIn,
        List<Missed> problems,
        List<Missed> skills,
        List<SlipSeen> slips,
        List<HelpWanted> help) {
    private static final int REPEATED = 6;

    public Summary {
        problems = List.copyOf(problems);
        skills = List.copyOf(skills);
        slips = List.copyOf(slips);
        help = List.copyOf(help);
    }

    /** Marks all that was handed in. */
    public static Summary of(final Sheet sheet, final List<HandIn> handIns) {
        return new Counting(sheet).summary(handIns);
    }

    /**
     * A sheet for next week of the skills missed most, as many problems and copies as this one; of
     * the same skills where nothing was missed.
     */
    public SheetPlan nextWeek(final int seed) {
        final SheetPlan plan = sheet.plan();
        final Set<Skill> skillsAgain = missed();
        final Pick pick =
                plan.pick() instanceof Pick.BySkills by
                        ? new Pick.BySkills(
                                skillsAgain,
                                by.problems(),
                                by.difficulties(),
                                by.sizes(),
                                by.voltages())
                        : Pick.BySkills.of(skillsAgain, sheet.problems());
        return new SheetPlan(pick, plan.ownNumbers(), plan.learners(), plan.ownBanks(), seed);
    }

    private Set<Skill> missed() {
        final Set<Skill> again = EnumSet.noneOf(Skill.class);
        byShare().limit(REPEATED).forEach(i -> again.add(sheet.templates().get(i).skill()));
        if (again.isEmpty()) {
            sheet.templates().stream().map(Template::skill).forEach(again::add);
        }
        return again;
    }

    private Stream<Integer> byShare() {
        final List<Integer> places = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            if (problems.get(i).share() > 0) {
                places.add(i);
            }
        }
        return places.stream()
                .sorted(Comparator.comparing(problems::get, Missed.MOST_MISSED_FIRST));
    }
}
