package wireworthy.evening.summary;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntSupplier;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.handin.HandIn;
import wireworthy.rules.Skill;

/**
 * What a group stumbled over.
 *
 * @param problems in the order of the sheet
 * @param bySkill what was missed most first
 * @param slips the commonest first
 * @param unexplained wrong without a known slip, in the order of the sheet
 * @param notes what can't be read as an answer, in the order of the sheet
 * @param help in the order of the sheet
 */
public record Summary(
        Sheet sheet,
        int handedIn,
        List<Missed> problems,
        Map<Skill, Missed> bySkill,
        List<SlipSeen> slips,
        List<Handed> unexplained,
        List<Handed> notes,
        List<HelpWanted> help) {
    public Summary {
        problems = List.copyOf(problems);
        bySkill = Collections.unmodifiableMap(new LinkedHashMap<>(bySkill));
        slips = List.copyOf(slips);
        unexplained = List.copyOf(unexplained);
        notes = List.copyOf(notes);
        help = List.copyOf(help);
    }

    /** Marks all that was handed in. */
    public static Summary of(final Sheet sheet, final List<HandIn> handIns) {
        return new Counting(sheet).summary(handIns);
    }

    /** How many of the sheet's learners handed in nothing. */
    public int missing() {
        return Math.max(0, sheet.learners() - handedIn);
    }

    /** The skills, what was missed most first. */
    public List<Missed> skills() {
        return List.copyOf(bySkill.values());
    }

    /**
     * A sheet for next week.
     *
     * @param seeds below {@value SheetPlan#SEEDS}, another each time
     */
    public NextWeek nextWeek(final IntSupplier seeds) {
        return NextWeek.of(this, seeds);
    }
}
