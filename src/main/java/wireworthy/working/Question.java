package wireworthy.working;

import java.util.List;
import java.util.Map;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;

/**
 * What is known and what is asked.
 *
 * @param figures the given numbers, read, in the order given
 * @param names the given names, such as a cable table
 * @param loads the names of the loads of a list, in order; empty without a list
 * @param available the sections one can buy, mm2, rising; empty where not given
 * @param find what is asked, in order
 * @param answers what the asker worked out, as typed, in order
 */
public record Question(
        Map<Ref, Reading.Read> figures,
        Map<Quantity, String> names,
        List<String> loads,
        List<Double> available,
        List<Quantity> find,
        Map<Quantity, String> answers) {
    /** The name of the subject of a reference; empty for the circuit itself. */
    public String subject(final Ref ref) {
        return ref.subject() == Ref.CIRCUIT ? "" : loads.get(ref.subject() - 1);
    }
}
