package wireworthy.working;

import java.util.Optional;
import wireworthy.facts.Source;
import wireworthy.rules.Ref;

/**
 * One line of a working as it is told.
 *
 * @param ref what it gives
 * @param subject the load it speaks of; empty for the circuit
 * @param rule id of the rule
 * @param formula in words: "load current = load power ÷ supply voltage"
 * @param numbers the same with this question's numbers: "54 ÷ 12 = 4.5 A"
 * @param value SI; NaN where nothing fits
 * @param source the published source of a table value or limit
 * @param note what was done about a value that stands in no table; empty mostly
 */
public record Line(
        Ref ref,
        String subject,
        String rule,
        String formula,
        String numbers,
        double value,
        Optional<Source> source,
        String note) {}
