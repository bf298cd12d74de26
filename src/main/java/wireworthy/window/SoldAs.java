package wireworthy.window;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wireworthy.practice.Given;
import wireworthy.practice.Template;
import wireworthy.record.WireSizes;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** Prefers exercises whose cable is sold the way the learner buys it: by section or by gauge. */
record SoldAs(WireSizes sizes) {
    /** So many exercises of a skill have to stay before others of it are left out. */
    private static final int ENOUGH = 3;

    private static final Given BY_GAUGE = new Given.Fixed("boat-cable");
    private static final Set<Quantity> SECTIONS =
            Set.of(
                    Quantity.SECTION,
                    Quantity.AVAILABLE_SECTIONS,
                    Quantity.SECTION_FOR_DROP,
                    Quantity.SECTION_FOR_AMPACITY,
                    Quantity.STANDARD_SECTION);

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
                ? !byGauge(template)
                : byGauge(template) || !bySection(template);
    }

    private static boolean byGauge(final Template template) {
        return speaksOf(template, Quantity.GAUGE)
                || BY_GAUGE.equals(template.given().get(Quantity.CABLE_TABLE.id()));
    }

    private static boolean bySection(final Template template) {
        return template.given().containsKey(Quantity.CABLE_TABLE.id())
                || SECTIONS.stream().anyMatch(each -> speaksOf(template, each));
    }

    private static boolean speaksOf(final Template template, final Quantity quantity) {
        return template.given().containsKey(quantity.id())
                || template.task().finds().contains(quantity);
    }
}
