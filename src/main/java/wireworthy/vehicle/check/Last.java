package wireworthy.vehicle.check;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * The last thing that was worked, kept as long as it is worked from the same.
 *
 * @param <T> what is worked
 */
final class Last<T> {
    private Optional<Object> from = Optional.empty();
    private Optional<T> worked = Optional.empty();

    /**
     * Works it, unless that was done last.
     *
     * @param key all that it depends on
     */
    T of(final Object key, final Supplier<T> work) {
        if (!from.equals(Optional.of(key)) || worked.isEmpty()) {
            worked = Optional.of(work.get());
            from = Optional.of(key);
        }
        return worked.get();
    }
}
