package wireworthy.vehicle.check;

import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.working.Caution;

/**
 * One load of a circuit.
 *
 * @param current A that all of them take from the cable; empty where not known
 * @param predicted V that arrive with everything of the circuit on; empty where not known
 * @param measured what the builder measured there, beside the predicted; empty until then
 */
public record CheckedLoad(
        String name,
        OptionalDouble current,
        OptionalDouble predicted,
        Optional<Comparison> measured) {
    /**
     * Measured beside predicted.
     *
     * @param volts V measured
     * @param difference V measured less than predicted; below nothing where more arrived
     * @param text what such a difference may mean, for people; never certain
     * @param caution where so few arrive that a joint may be growing warm
     */
    public record Comparison(
            double volts, double difference, String text, Optional<Caution> caution) {}
}
