package wireworthy.evening.summary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wireworthy.evening.Sheet;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.Reply;
import wireworthy.practice.Exercise;
import wireworthy.rules.Skill;
import wireworthy.rules.SlipCatalogue;
import wireworthy.texts.TextBundle;

/** Counts what was right, what wrong and by which slips. */
final class Counting {
    private static final TextBundle SLIPS = new TextBundle("slips");

    private final Sheet sheet;
    private final List<Missed> problems = new ArrayList<>();
    private final Map<Skill, Missed> skills = new EnumMap<>(Skill.class);
    private final Map<String, SlipSeen> slips = new TreeMap<>();
    private final List<Handed> unexplained = new ArrayList<>();
    private final List<Handed> notes = new ArrayList<>();
    private final Map<Integer, List<String>> help = new TreeMap<>();

    Counting(final Sheet sheet) {
        this.sheet = sheet;
        for (int i = 0; i < sheet.problems(); i++) {
            problems.add(Missed.none(i + 1 + " " + sheet.templates().get(i).skill().words()));
        }
    }

    Summary summary(final List<HandIn> handIns) {
        handIns.forEach(this::count);
        final Comparator<SlipSeen> commonest = Comparator.comparingDouble(seen -> -seen.weight());
        return new Summary(
                sheet,
                handIns.size(),
                problems,
                mostMissedFirst(),
                slips.values().stream()
                        .sorted(commonest.thenComparingInt(seen -> SlipCatalogue.order(seen.id())))
                        .toList(),
                inOrder(unexplained),
                inOrder(notes),
                help.entrySet().stream()
                        .map(e -> new HelpWanted(e.getKey(), skill(e.getKey()), e.getValue()))
                        .toList());
    }

    private static List<Handed> inOrder(final List<Handed> all) {
        return all.stream().sorted(Comparator.comparingInt(Handed::problem)).toList();
    }

    private Map<Skill, Missed> mostMissedFirst() {
        final Map<Skill, Missed> sorted = new LinkedHashMap<>();
        skills.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Missed.MOST_MISSED_FIRST))
                .forEach(each -> sorted.put(each.getKey(), each.getValue()));
        return sorted;
    }

    private String skill(final int problem) {
        return sheet.templates().get(problem - 1).skill().words();
    }

    private void count(final HandIn handIn) {
        final String who = (handIn.learner() + " " + handIn.name()).strip();
        for (int problem = 1; problem <= sheet.problems(); problem++) {
            final Exercise exercise = sheet.exercise(handIn.learner(), problem);
            final List<String> typed = handIn.reply(problem).map(Reply::typed).orElse(List.of());
            final List<Verdict> verdicts = Verdict.of(exercise, typed);
            for (int i = 0; i < verdicts.size(); i++) {
                final Verdict verdict = verdicts.get(i);
                count(problem, who, verdict);
                final String each = i < typed.size() ? typed.get(i).strip() : "";
                final Handed handed = new Handed(problem, skill(problem), each, who);
                if (verdict.unexplained()) {
                    unexplained.add(handed);
                } else if (verdict.right().isEmpty() && !each.isEmpty()) {
                    notes.add(handed);
                }
            }
            if (handIn.reply(problem).map(Reply::wantsHelp).orElse(false)) {
                help.computeIfAbsent(problem, any -> new ArrayList<>()).add(who);
            }
        }
    }

    private void count(final int problem, final String who, final Verdict verdict) {
        problems.set(problem - 1, problems.get(problem - 1).with(verdict));
        final Missed before =
                skills.getOrDefault(verdict.skill(), Missed.none(verdict.skill().words()));
        skills.put(verdict.skill(), before.with(verdict));
        for (final String id : verdict.slips()) {
            final SlipSeen one =
                    new SlipSeen(
                            id,
                            SLIPS.of(id + ".short"),
                            Set.of(verdict.skill()),
                            List.of(who),
                            1,
                            1.0 / verdict.slips().size());
            slips.merge(id, one, Counting::together);
        }
    }

    private static SlipSeen together(final SlipSeen one, final SlipSeen other) {
        final Set<String> learners = new LinkedHashSet<>(one.learners());
        learners.addAll(other.learners());
        final Set<Skill> skills = EnumSet.copyOf(one.skills());
        skills.addAll(other.skills());
        return new SlipSeen(
                one.id(),
                one.words(),
                skills,
                List.copyOf(learners),
                one.answers() + other.answers(),
                one.weight() + other.weight());
    }
}
