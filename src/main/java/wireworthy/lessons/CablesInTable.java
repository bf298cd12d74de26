package wireworthy.lessons;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import wireworthy.facts.Awg;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;

/** Whether the cable table of a figure has the sections and the insulation the figure offers. */
final class CablesInTable {
    private static final List<FigureOption> SECTIONS =
            List.of(FigureOption.SECTION, FigureOption.THINNER_SECTION);

    private CablesInTable() {}

    /**
     * Looks at every stop of the handles.
     *
     * @throws Refused naming the line of the option that is not in the table
     */
    static void check(final Map<FigureOption, Handle> handles, final Yaml.Keys keys) {
        if (!(handles.get(FigureOption.CABLE_TABLE) instanceof Handle.Named named)) {
            return;
        }
        final CableTable table = CableTables.named(named.name());
        for (final FigureOption option : SECTIONS) {
            if (handles.get(option) instanceof Handle.Amount sections
                    && !mm2(sections).allMatch(table::holds)) {
                throw noCable(option, table, keys);
            }
        }
        if (handles.get(FigureOption.INSULATION_TEMPERATURE) instanceof Handle.Amount degrees
                && degrees.written().anyMatch(each -> table.insulationColumn(each).isEmpty())) {
            throw noColumn(table, keys);
        }
    }

    private static Refused noCable(
            final FigureOption option, final CableTable table, final Yaml.Keys keys) {
        final List<CableTable.Row> rows = table.usableRows();
        return new Refused(
                keys.at(option.id()).line(),
                "\"%s\" holds a cable that is not in the cable table %s"
                        .formatted(option.id(), table.id()),
                "Use %s to %s, or name another cable-table."
                        .formatted(rows.get(0).label(), rows.get(rows.size() - 1).label()));
    }

    private static Refused noColumn(final CableTable table, final Yaml.Keys keys) {
        return new Refused(
                keys.at(FigureOption.INSULATION_TEMPERATURE.id()).line(),
                "The cable table %s has no insulation rated that low".formatted(table.id()),
                "Use at least %.0f degC.".formatted(table.insulationTemperatures().get(0)));
    }

    private static DoubleStream mm2(final Handle.Amount amount) {
        return amount.quantity() == Quantity.GAUGE
                ? amount.written().map(Awg::areaMm2)
                : amount.written().map(each -> each / Dimension.AREA.scale());
    }
}
