package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;
import wireworthy.texts.TextBundle;

/**
 * A value taken because the question is silent.
 *
 * @param id the quantity as questions name it
 * @param text the value for people
 */
public record Assumed(String id, String text) {
    private static final TextBundle TEXTS = new TextBundle("working");

    /** Every assumption the working used. */
    public static List<Assumed> of(final Worked worked) {
        return worked.plan().assumedInWords();
    }

    /** Every assumption that a plan uses: they hang on its setting alone, not on the numbers. */
    static List<Assumed> by(final Plan plan) {
        final List<Assumed> all = new ArrayList<>();
        for (int i = 0; i < plan.assumed().size(); i++) {
            all.add(number(plan.assumed().get(i).quantity(), plan.assumption(i)));
        }
        names(plan, all);
        return List.copyOf(all);
    }

    private static Assumed number(final Quantity quantity, final double value) {
        final String text = FigureText.of(value, quantity.dimension(), 4);
        return switch (quantity) {
            case RESISTIVITY ->
                    new Assumed(quantity.id(), TEXTS.of("assumed.resistivity", "value", text));
            case MARGIN -> new Assumed(quantity.id(), TEXTS.of("assumed.margin", "value", text));
            case DROP_LIMIT_SHARE ->
                    new Assumed(DROP_LIMIT.id(), TEXTS.of("assumed.drop-limit", "value", text));
            case USABLE_SHARE ->
                    new Assumed(quantity.id(), TEXTS.of("assumed.usable-share", "value", text));
            case BUNDLED -> new Assumed(quantity.id(), TEXTS.of("assumed.bundled", "value", text));
            default -> new Assumed(quantity.id(), quantity.words() + " " + text);
        };
    }

    private static void names(final Plan plan, final List<Assumed> all) {
        final Setting setting = plan.setting();
        if (uses(plan, LOOP_LENGTH) || uses(plan, LONGEST_RUN)) {
            name(setting, RETURN, TEXTS.of("assumed.return"), all);
        }
        final boolean table =
                uses(plan, TABLE_AMPACITY)
                        || uses(plan, SECTION_FOR_AMPACITY)
                        || uses(plan, STANDARD_SECTION);
        if (table) {
            name(setting, CABLE_TABLE, TEXTS.of("assumed.cable-table"), all);
        }
        if (uses(plan, AMPACITY) || uses(plan, AMPACITY_NEEDED)) {
            name(setting, IN_THERMAL_INSULATION, TEXTS.of("assumed.in-thermal-insulation"), all);
            if (!setting.gave(AMBIENT_TEMPERATURE)) {
                name(setting, ENGINE_SPACE, TEXTS.of("assumed.engine-space"), all);
            }
        }
        if (uses(plan, FUSE) || uses(plan, SECTION_FOR_AMPACITY)) {
            name(setting, FUSE_SERIES, TEXTS.of("assumed.fuse-series"), all);
        }
    }

    private static void name(
            final Setting setting,
            final Quantity quantity,
            final String text,
            final List<Assumed> all) {
        if (!setting.gave(quantity)) {
            all.add(new Assumed(quantity.id(), text));
        }
    }

    private static boolean uses(final Plan plan, final Quantity quantity) {
        return plan.steps().stream()
                .anyMatch(step -> step.direction().output().equals(Ref.circuit(quantity)));
    }
}
