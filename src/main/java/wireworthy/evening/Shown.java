package wireworthy.evening;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;

/** What people have been shown by the time they do a sheet: whatever its workings ask of them. */
public final class Shown {
    private final Sheet sheet;
    private final Shelf shelf;
    private final Set<Skill> skills = EnumSet.noneOf(Skill.class);

    Shown(final Sheet sheet, final Shelf shelf) {
        this.sheet = sheet;
        this.shelf = shelf;
        sheet.exercises(1).forEach(each -> skills.addAll(asked(each)));
    }

    private static List<Skill> asked(final Exercise exercise) {
        final Stream<Skill> lines =
                exercise.circuit().stream()
                        .flatMap(worked -> worked.plan().steps().stream())
                        .map(step -> step.direction().skill());
        return Stream.concat(Stream.of(exercise.skill()), lines).toList();
    }

    /** What fits a pick and asks nothing that was not shown. */
    public List<Template> fitting(final Pick.BySkills by) {
        return Selection.fitting(by, shelf.templates(sheet.plan().ownBanks())).stream()
                .filter(each -> sheet.templates().contains(each) || holds(each))
                .toList();
    }

    private boolean holds(final Template template) {
        return skills.containsAll(asked(shelf.example(template)));
    }
}
