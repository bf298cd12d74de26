package wireworthy.rules;

import java.util.List;
import java.util.stream.Stream;

/** All rules, in the order that settles ties. */
public final class RuleBook {
    private static final List<Direction> ALL =
            Stream.of(
                            PowerRules.directions(),
                            LoadRules.directions(),
                            ConductorRules.directions(),
                            DropRules.directions(),
                            FuseRules.directions(),
                            AmpacityRules.directions(),
                            SectionRules.directions(),
                            BatteryRules.directions(),
                            ProtectionRules.directions())
                    .flatMap(List::stream)
                    .toList();

    private RuleBook() {}

    /** Every direction of every rule. */
    public static List<Direction> directions() {
        return ALL;
    }
}
