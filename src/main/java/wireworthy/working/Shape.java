package wireworthy.working;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wireworthy.facts.CableTables;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;

/**
 * All of a question but its numbers: questions of one shape share a plan.
 *
 * @param setting the named choices
 * @param figures what has a number, in the order given
 * @param loads for each load of the list, what has a number
 * @param find what is asked
 */
record Shape(Setting setting, List<Ref> figures, List<Set<Quantity>> loads, List<Quantity> find) {

    static Shape of(final Question question) {
        final List<Set<Quantity>> loads = new ArrayList<>();
        for (int i = 1; i <= question.loads().size(); i++) {
            loads.add(given(question, i));
        }
        return new Shape(
                setting(question),
                List.copyOf(question.figures().keySet()),
                loads,
                question.find());
    }

    /** The text that tells shapes apart. */
    static String key(final Question question) {
        final StringBuilder key = new StringBuilder();
        for (final Ref ref : question.figures().keySet()) {
            key.append(ref.quantity().id()).append(ref.subject()).append(',');
        }
        key.append(question.names()).append(question.loads().size()).append(question.available());
        for (final Quantity asked : question.find()) {
            key.append(asked.id()).append(',');
        }
        return key.toString();
    }

    private static Set<Quantity> given(final Question question, final int subject) {
        final Set<Quantity> given = EnumSet.noneOf(Quantity.class);
        question.figures().keySet().stream()
                .filter(ref -> ref.subject() == subject)
                .forEach(ref -> given.add(ref.quantity()));
        return given;
    }

    private static Setting setting(final Question question) {
        final Set<Quantity> given = given(question, Ref.CIRCUIT);
        given.addAll(question.names().keySet());
        if (!question.loads().isEmpty()) {
            given.add(Quantity.LOADS);
        }
        return new Setting(
                CableTables.named(
                        question.names().getOrDefault(Quantity.CABLE_TABLE, CableTables.USUAL)),
                FuseSeriesTable.named(question.names().getOrDefault(Quantity.FUSE_SERIES, "blade")),
                is(question, Quantity.CONDUCTOR_METAL, "aluminium"),
                is(question, Quantity.RETURN, "chassis"),
                is(question, Quantity.ENGINE_SPACE, "yes"),
                is(question, Quantity.IN_THERMAL_INSULATION, "yes"),
                question.available(),
                given);
    }

    private static boolean is(final Question question, final Quantity name, final String value) {
        return value.equals(question.names().getOrDefault(name, ""));
    }
}
