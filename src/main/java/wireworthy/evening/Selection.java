package wireworthy.evening;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wireworthy.practice.Given;
import wireworthy.practice.SoldBy;
import wireworthy.practice.SplitMix;
import wireworthy.practice.Template;
import wireworthy.record.WireSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Skill;

/** Selects the templates of a sheet picked by skill. The same lots always give the same ones. */
final class Selection {
    private final Pick.BySkills by;

    private Selection(final Pick.BySkills by) {
        this.by = by;
    }

    /**
     * Turn by turn a template of each skill; once a skill's templates have all come, they come
     * again.
     *
     * @throws EveningProblem where a skill has none that fits
     */
    static List<Template> of(
            final Pick.BySkills by, final List<Template> all, final SplitMix lots) {
        final Selection selection = new Selection(by);
        final List<List<Template>> turns = new ArrayList<>();
        for (final Skill skill : lots.shuffled(List.copyOf(by.skills()))) {
            turns.add(lots.shuffled(selection.fitting(skill, all)));
        }
        final List<Template> selected = new ArrayList<>();
        for (int i = 0; i < by.problems(); i++) {
            final List<Template> turn = turns.get(i % turns.size());
            selected.add(turn.get(i / turns.size() % turn.size()));
        }
        return selected;
    }

    /** How many templates of each skill fit. */
    static Map<Skill, Integer> counts(final Pick.BySkills by, final List<Template> all) {
        final Map<Skill, Integer> counts = new EnumMap<>(Skill.class);
        by.skills().forEach(skill -> counts.put(skill, 0));
        fitting(by, all).forEach(each -> counts.merge(each.skill(), 1, Integer::sum));
        return counts;
    }

    /** The templates that fit, of any of the skills. */
    static List<Template> fitting(final Pick.BySkills by, final List<Template> all) {
        final Selection selection = new Selection(by);
        return all.stream()
                .filter(each -> by.skills().contains(each.skill()) && selection.fits(each))
                .toList();
    }

    private List<Template> fitting(final Skill skill, final List<Template> all) {
        final List<Template> fitting =
                all.stream().filter(each -> each.skill() == skill && fits(each)).toList();
        if (fitting.isEmpty()) {
            throw EveningProblem.of("pick.none-fits", "skill", skill.words());
        }
        return fitting;
    }

    private boolean fits(final Template template) {
        return by.difficulties().contains(Difficulty.of(template.difficulty()))
                && by.sizes().map(sizes -> fits(template, sizes)).orElse(true)
                && volts(template).stream().allMatch(this::allowed);
    }

    private static boolean fits(final Template template, final WireSizes sizes) {
        return sizes == WireSizes.MM2
                ? !SoldBy.gauge(template)
                : SoldBy.gauge(template) || !SoldBy.section(template);
    }

    /** The supply voltages that may be drawn for a template; none where it names none. */
    private static List<String> volts(final Template template) {
        final Given given = template.given().get(Quantity.SUPPLY_VOLTAGE.id());
        if (given instanceof Given.Fixed fixed) {
            return List.of(fixed.text());
        }
        if (given instanceof Given.Range range) {
            return List.of(range.at(0), range.at(range.count() - 1));
        }
        return given instanceof Given.Choice choice ? choice.of() : List.of();
    }

    private boolean allowed(final String volts) {
        final Optional<SystemVoltage> system =
                Figures.read(volts, Dimension.VOLTAGE, true) instanceof Reading.Read read
                        ? SystemVoltage.of(read.value())
                        : Optional.empty();
        return system.map(by.voltages()::contains).orElse(true);
    }
}
