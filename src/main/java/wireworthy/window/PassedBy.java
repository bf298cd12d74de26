package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;

/** The exercises that the learner passed by since the last answer. */
final class PassedBy {
    private final List<Template> all = new ArrayList<>();

    void add(final Exercise exercise) {
        all.add(exercise.template());
    }

    void forget() {
        all.clear();
    }

    /** Others than those: of other skills where there are any, else with other texts, else all. */
    Predicate<Template> wanted(final List<Template> offered) {
        final Predicate<Template> otherSkill =
                each -> all.stream().noneMatch(it -> it.skill() == each.skill());
        final Predicate<Template> otherText =
                each -> all.stream().noneMatch(it -> it.fullId().equals(each.fullId()));
        if (offered.stream().anyMatch(otherSkill)) {
            return otherSkill;
        }
        return offered.stream().anyMatch(otherText) ? otherText : any -> true;
    }
}
