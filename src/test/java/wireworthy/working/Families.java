package wireworthy.working;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Straight-line sums in field units for random questions of every topic. */
final class Families {
    private static final Map<String, Consumer<Draw>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("one element", LoadFamilies::element);
        ALL.put("charge and energy", LoadFamilies::chargeAndEnergy);
        ALL.put("converter", LoadFamilies::converter);
        ALL.put("loads in a list", LoadFamilies::loads);
        ALL.put("resistances side by side and in a string", LoadFamilies::resistances);
        ALL.put("cable", CableFamilies::cable);
        ALL.put("motor starting", CableFamilies::starting);
        ALL.put("way back through the chassis", CableFamilies::chassis);
        ALL.put("section and run for a limit", CableFamilies::limit);
        ALL.put("fuse for a cable", LimitFamilies::fuse);
        ALL.put("fuse before the cable", LimitFamilies::bareFuse);
        ALL.put("ampacity", LimitFamilies::ampacity);
        ALL.put("standard section", LimitFamilies::standard);
        ALL.put("batteries", LoadFamilies::batteries);
        ALL.put("runtime", LoadFamilies::runtime);
        ALL.put("charging and need", LoadFamilies::charging);
        ALL.put("source and short circuit", CableFamilies::source);
        ALL.put("conductor", CableFamilies::conductor);
        ALL.put("backward from the drop", CableFamilies::backward);
        ALL.put("backward from the rest", CableFamilies::backwardElsewhere);
    }

    private Families() {}

    static Map<String, Consumer<Draw>> all() {
        return ALL;
    }
}
