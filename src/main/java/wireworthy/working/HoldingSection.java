package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Ref;
import wireworthy.texts.TextBundle;

/**
 * The smallest section on offer that carries the current and loses no more than is allowed, in cold
 * copper and in warm.
 */
public final class HoldingSection {
    private static final TextBundle TEXTS = new TextBundle("cautions");

    private static final double EVEN = 1e-9;

    private HoldingSection() {}

    /** The section in m2 that holds the limit in force; empty where none does, or nothing tells. */
    public static OptionalDouble of(final Worked worked) {
        final OptionalDouble limit = Remedies.limit(worked);
        return limit.isEmpty() || worked.typed(Ref.circuit(RESISTANCE_PER_LENGTH)).isPresent()
                ? OptionalDouble.empty()
                : of(worked, limit.getAsDouble());
    }

    /**
     * What would keep the limit in warm copper, too: a section, a run; empty where neither does.
     *
     * @param before V lost before this cable begins, once that is warm
     */
    public static String told(final Worked worked, final double before) {
        final double most = Remedies.limit(worked).orElse(Double.NaN) - before;
        final Optional<String> section =
                of(worked, most).stream()
                        .mapToObj(m2 -> Sold.text(worked.plan().setting(), m2))
                        .findFirst();
        final Optional<String> length =
                Remedies.warmToo(worked, before).stream()
                        .filter(each -> each.quantity() == ONE_WAY_LENGTH)
                        .map(each -> FigureText.roundedDown(each.value(), Dimension.LENGTH))
                        .findFirst();
        return told(section, length);
    }

    private static String told(final Optional<String> section, final Optional<String> length) {
        final String key =
                section.isPresent() && length.isPresent()
                        ? "only-cold.either"
                        : section.isPresent() ? "only-cold.section" : "only-cold.length";
        return section.isEmpty() && length.isEmpty()
                ? ""
                : TEXTS.of(key, "section", section.orElse(""), "length", length.orElse(""));
    }

    /**
     * The section in m2.
     *
     * @param limit V that may be lost in this cable
     */
    public static OptionalDouble of(final Worked worked, final double limit) {
        if (!(limit > 0)) {
            return OptionalDouble.empty();
        }
        final OptionalDouble cold = cold(worked, limit);
        final OptionalDouble carrying = worked.value(SECTION_FOR_AMPACITY);
        if (cold.isEmpty() || (carrying.isEmpty() && worked.value(AMPACITY_NEEDED).isPresent())) {
            return OptionalDouble.empty();
        }
        final double needed = Math.max(cold.getAsDouble(), carrying.orElse(0)) * (1 - EVEN);
        final CableTable table = worked.plan().setting().table();
        return DoubleStream.of(worked.plan().setting().sizes())
                .filter(each -> each >= needed)
                .filter(each -> table.holds(each / Dimension.AREA.scale()))
                .filter(each -> WarmDrop.at(worked, each).orElse(0) <= limit * (1 + EVEN))
                .findFirst();
    }

    /** What cold copper needs. */
    private static OptionalDouble cold(final Worked worked, final double limit) {
        final OptionalDouble section = worked.value(SECTION);
        final OptionalDouble drop = worked.value(DROP);
        if (section.isPresent() && drop.isPresent()) {
            return OptionalDouble.of(section.getAsDouble() * drop.getAsDouble() / limit);
        }
        final double inForce = Remedies.limit(worked).orElse(limit);
        return worked.value(SECTION_FOR_DROP).stream()
                .map(each -> each * inForce / limit)
                .findFirst();
    }

    /** That none on offer is enough, and what to do then. */
    static String none(final Worked worked, final double about) {
        final boolean ofTable = worked.plan().setting().available().isEmpty();
        final String table = worked.plan().setting().table().id();
        final String others = ofTable ? reaching(about) : "";
        return TEXTS.of(
                ofTable ? "way.no-section" : "way.none-to-buy",
                "table",
                table,
                "about",
                FigureText.roundedUp(about, Dimension.AREA),
                "next",
                others.isEmpty()
                        ? TEXTS.of("way.no-section.other-way")
                        : TEXTS.of("way.no-section.table", "tables", others));
    }

    private static String reaching(final double about) {
        final double mm2 = about / Dimension.AREA.scale();
        final List<CableTable> all = CableTables.all();
        return all.stream()
                .filter(each -> each.largestSectionMm2() >= mm2)
                .map(CableTable::id)
                .collect(Collectors.joining(", "));
    }
}
