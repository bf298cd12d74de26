package wireworthy.practice;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * SplitMix64 (Steele, Lea, Flood 2014). Our own few lines, because a library's generator may change
 * between versions and the numbers of a printed sheet must not.
 */
public final class SplitMix {
    private long state;

    SplitMix(final long seed) {
        this.state = seed;
    }

    /** Seeded by a text, through FNV-1a over its UTF-8 bytes. */
    public static SplitMix of(final String key) {
        long hash = 0xcbf29ce484222325L;
        for (final byte each : key.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (each & 0xff)) * 0x100000001b3L;
        }
        return new SplitMix(hash);
    }

    long next() {
        state += 0x9e3779b97f4a7c15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    /** From 0 to bound - 1. */
    public int below(final int bound) {
        return (int) Long.remainderUnsigned(next(), bound);
    }

    /** The same things in another order, by Fisher and Yates. */
    public <T> List<T> shuffled(final List<T> things) {
        final List<T> left = new ArrayList<>(things);
        final List<T> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(below(left.size())));
        }
        return order;
    }
}
