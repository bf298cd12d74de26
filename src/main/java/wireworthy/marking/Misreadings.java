package wireworthy.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wireworthy.rules.Dimension;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/** The ways a given can be misread, from the unit it is written in. */
final class Misreadings {
    private static final double FOOT = 0.3048;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    private Misreadings() {}

    /** The misreadings of the givens that the lines leading to the asked place read. */
    static List<Change.Misread> of(final Worked worked) {
        final List<Change.Misread> all = new ArrayList<>();
        for (final Map.Entry<Ref, Reading.Read> given : worked.question().figures().entrySet()) {
            final Optional<Integer> place = worked.plan().placeOf(given.getKey());
            place.ifPresent(at -> add(all, at, given.getKey(), given.getValue()));
        }
        return all;
    }

    /** Whether a given may be misread. */
    static boolean of(final Worked worked, final Ref given) {
        return of(worked).stream().anyMatch(m -> worked.plan().at(m.place()).equals(given));
    }

    private static void add(
            final List<Change.Misread> all, final int at, final Ref ref, final Reading.Read read) {
        final double value = read.value();
        final Dimension dimension = ref.quantity().dimension();
        switch (read.unit()) {
            case "mA", "mV", "mW", "mAh", "mWh" -> {
                all.add(new Change.Misread("milli-as-unit", at, value * 1000));
                all.add(new Change.Misread("milli-as-hundredth", at, value * 10));
            }
            case "mohm" -> {
                all.add(new Change.Misread("milli-as-unit", at, value * 1000));
                all.add(new Change.Misread("milli-as-hundredth", at, value * 10));
                all.add(new Change.Misread("milliohm-as-ohm", at, value * 1000));
            }
            case "cm" -> {
                if (dimension == Dimension.LENGTH) {
                    all.add(new Change.Misread("centimetre-as-metre", at, value * 100));
                }
            }
            case "ft" -> {
                if (dimension == Dimension.LENGTH) {
                    all.add(new Change.Misread("feet-as-metre", at, value / FOOT));
                }
            }
            case "h min" -> all.add(new Change.Misread("minutes-as-decimals", at, decimals(value)));
            default -> {}
        }
    }

    /** 1 h 30 min read as 1.30 h. */
    private static double decimals(final double seconds) {
        final double hours = Math.floor(seconds / HOUR + 1e-9);
        final double minutes = (seconds - hours * HOUR) / MINUTE;
        return (hours + minutes / 100) * HOUR;
    }
}
