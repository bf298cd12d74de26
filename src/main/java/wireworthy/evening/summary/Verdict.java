package wireworthy.evening.summary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wireworthy.evening.Asked;
import wireworthy.marking.Change;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;

/**
 * What is found of one answer.
 *
 * @param right empty where it was not answered or can't be read
 * @param slips ids of what explains it; several where any of them may be it
 */
record Verdict(Skill skill, Optional<Boolean> right, List<String> slips) {
    /** Whether it is wrong and no known slip gives it. */
    boolean unexplained() {
        return right.filter(it -> !it).isPresent() && slips.isEmpty();
    }

    /** For each answer that an exercise asks for, in order. */
    static List<Verdict> of(final Exercise exercise, final List<String> typed) {
        return exercise instanceof Problem problem
                ? figures(problem, typed)
                : List.of(letters(exercise, typed.isEmpty() ? "" : typed.get(0)));
    }

    private static List<Verdict> figures(final Problem problem, final List<String> typed) {
        final Map<Ref, String> answers = new LinkedHashMap<>();
        for (int i = 0; i < typed.size(); i++) {
            if (!typed.get(i).isBlank()) {
                answers.put(problem.parts().get(i).ref(), typed.get(i));
            }
        }
        final List<Mark> marks = Marker.marks(problem.worked(), answers);
        final List<Verdict> verdicts = new ArrayList<>();
        for (final Problem.Part part : problem.parts()) {
            final Skill skill = problem.only(part).skill();
            verdicts.add(
                    marks.stream()
                            .filter(mark -> mark.ref().equals(part.ref()))
                            .findFirst()
                            .map(mark -> of(skill, mark))
                            .orElse(new Verdict(skill, Optional.empty(), List.of())));
        }
        return verdicts;
    }

    /** What follows soundly from an own earlier figure counts as right. */
    private static Verdict of(final Skill skill, final Mark mark) {
        return new Verdict(
                skill,
                mark.sound().map(sound -> sound || mark.follows()),
                mark.explained().stream()
                        .flatMap(outcome -> outcome.changes().stream())
                        .map(Change::id)
                        .distinct()
                        .toList());
    }

    private static Verdict letters(final Exercise exercise, final String typed) {
        final String letters = plain(typed);
        if (letters.isEmpty()) {
            return new Verdict(exercise.skill(), Optional.empty(), List.of());
        }
        final boolean right = letters.equals(plain(Asked.of(exercise).get(0).right()));
        return new Verdict(exercise.skill(), Optional.of(right), slip(exercise, letters));
    }

    private static String plain(final String typed) {
        return typed.toUpperCase(Locale.ROOT).replaceAll("[^A-Z]", "");
    }

    private static List<String> slip(final Exercise exercise, final String letters) {
        if (!(exercise instanceof ChoiceProblem choice) || letters.length() != 1) {
            return List.of();
        }
        final int place = letters.charAt(0) - 'A';
        return place < choice.options().size()
                ? choice.options().get(place).slip().stream().toList()
                : List.of();
    }
}
