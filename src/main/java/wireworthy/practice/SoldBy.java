package wireworthy.practice;

import java.util.Set;
import wireworthy.rules.Quantity;

/** By what the cable of an exercise is sold: by its section in mm², by its gauge, or neither. */
public final class SoldBy {
    private static final Given BY_GAUGE = new Given.Fixed("boat-cable");
    private static final Set<Quantity> SECTIONS =
            Set.of(
                    Quantity.SECTION,
                    Quantity.AVAILABLE_SECTIONS,
                    Quantity.SECTION_FOR_DROP,
                    Quantity.SECTION_FOR_AMPACITY,
                    Quantity.STANDARD_SECTION);

    private SoldBy() {}

    /** Whether a gauge is given, asked or the key of the table in use. */
    public static boolean gauge(final Template template) {
        return speaksOf(template, Quantity.GAUGE)
                || BY_GAUGE.equals(template.given().get(Quantity.CABLE_TABLE.id()));
    }

    /** Whether a section or a table of sections is given or asked. */
    public static boolean section(final Template template) {
        return template.given().containsKey(Quantity.CABLE_TABLE.id())
                || SECTIONS.stream().anyMatch(each -> speaksOf(template, each));
    }

    private static boolean speaksOf(final Template template, final Quantity quantity) {
        return template.given().containsKey(quantity.id())
                || template.task().finds().contains(quantity);
    }
}
