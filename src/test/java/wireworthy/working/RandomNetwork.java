package wireworthy.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Networks of cables for tests: lines, branches and rings with loads of every kind. */
final class RandomNetwork {
    private static final double[] SECTIONS = {1.5, 2.5, 4, 6, 10, 16};
    private static final double[] SUPPLIES = {12, 24, 48};

    private RandomNetwork() {}

    static CableNetwork of(final long seed) {
        final Random random = new Random(seed);
        return of(random, 2 + random.nextInt(59));
    }

    /** A network of so many places, the source among them. */
    static CableNetwork of(final Random random, final int places) {
        final double supply = SUPPLIES[random.nextInt(SUPPLIES.length)];
        final List<CableNetwork.Stretch> stretches = new ArrayList<>();
        for (int i = 1; i < places; i++) {
            stretches.add(stretch(random, name(random.nextInt(i)), name(i)));
        }
        for (int ring = 0; ring < places / 8; ring++) {
            final int a = random.nextInt(places);
            final int b = random.nextInt(places);
            if (a != b) {
                stretches.add(stretch(random, name(a), name(b)));
            }
        }
        final List<NetworkLoad> loads = new ArrayList<>();
        for (int i = 1; i < places; i++) {
            if (random.nextInt(3) > 0) {
                loads.add(load(random, "load " + i, name(i), supply));
            }
        }
        loads.add(load(random, "last", name(places - 1), supply));
        final double internal = random.nextBoolean() ? 0 : random.nextDouble() * 0.02;
        return new CableNetwork(supply, internal, stretches, loads);
    }

    private static String name(final int place) {
        return place == 0 ? CableNetwork.SOURCE : "n" + place;
    }

    private static CableNetwork.Stretch stretch(
            final Random random, final String from, final String to) {
        final double section = SECTIONS[random.nextInt(SECTIONS.length)] * 1e-6;
        final double resistance = 2 * 0.0172e-6 * (0.3 + 3 * random.nextDouble()) / section;
        return new CableNetwork.Stretch(from, to, resistance, section, "");
    }

    private static NetworkLoad load(
            final Random random, final String name, final String at, final double supply) {
        final double watts = 0.5 + 5 * random.nextDouble();
        return switch (random.nextInt(3)) {
            case 0 -> new NetworkLoad.Watts(name, at, watts);
            case 1 -> new NetworkLoad.Ohms(name, at, supply * supply / watts);
            default -> new NetworkLoad.Amps(name, at, watts / supply);
        };
    }
}
