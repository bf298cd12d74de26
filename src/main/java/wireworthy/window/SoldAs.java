package wireworthy.window;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wireworthy.practice.SoldBy;
import wireworthy.practice.Template;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/** Prefers exercises whose cable is sold the way the learner buys it: by section or by gauge. */
record SoldAs(WireSizes sizes) {
    /** So many exercises of a skill have to stay before others of it are left out. */
    private static final int ENOUGH = 3;

    /** Those that fit, and the others of every skill that would be left with too few. */
    List<Template> of(final List<Template> templates) {
        final Map<Skill, Long> fitting =
                templates.stream()
                        .filter(this::fits)
                        .collect(Collectors.groupingBy(Template::skill, Collectors.counting()));
        return templates.stream()
                .filter(each -> fits(each) || fitting.getOrDefault(each.skill(), 0L) < ENOUGH)
                .toList();
    }

    private boolean fits(final Template template) {
        return sizes == WireSizes.MM2
                ? !SoldBy.gauge(template)
                : SoldBy.gauge(template) || !SoldBy.section(template);
    }
}
