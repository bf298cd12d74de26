package wireworthy.evening;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;

/** What people have been shown by the time they do a sheet: the rules that its workings go by. */
public final class Shown {
    private final Sheet sheet;
    private final Shelf shelf;
    private final Set<String> rules = new HashSet<>();

    Shown(final Sheet sheet, final Shelf shelf) {
        this.sheet = sheet;
        this.shelf = shelf;
        sheet.exercises(1).forEach(each -> rules.addAll(asked(each)));
    }

    /** Where nothing is worked, as in a choice, its skill stands for what was told. */
    private static List<String> asked(final Exercise exercise) {
        return exercise.circuit()
                .map(worked -> worked.plan().steps())
                .map(steps -> steps.stream().map(step -> step.direction().rule()).toList())
                .orElseGet(() -> List.of(exercise.skill().id()));
    }

    /** What fits a pick and asks nothing that was not shown. */
    public List<Template> fitting(final Pick.BySkills by) {
        return Selection.fitting(by, shelf.templates(sheet.plan().ownBanks())).stream()
                .filter(each -> sheet.templates().contains(each) || holds(each))
                .toList();
    }

    private boolean holds(final Template template) {
        return rules.containsAll(asked(shelf.example(template)));
    }
}
