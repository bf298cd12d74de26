package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wireworthy.facts.CableTable;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;
import wireworthy.working.Worked;

/** What is plainly wrong with a fuse or a size of cable that was picked. */
final class Choices {
    private Choices() {}

    static Optional<Check> check(final Worked worked, final Ref ref, final Reading.Read read) {
        return switch (ref.quantity()) {
            case FUSE, MAIN_FUSE -> fuse(worked, read.value());
            case STANDARD_SECTION, SECTION_FOR_AMPACITY ->
                    notARow(worked.plan().setting(), read.value());
            default -> Optional.empty();
        };
    }

    private static Optional<Check> fuse(final Worked worked, final double amps) {
        return Stream.of(
                        noRating(worked.plan().setting(), amps),
                        above(worked, amps, FUSE_CEILING, "fuse-above-cable"),
                        below(worked, amps, CIRCUIT_CURRENT, "fuse-below-load"))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Check> noRating(final Setting setting, final double amps) {
        return Soundness.isRating(setting, amps)
                ? Optional.empty()
                : Optional.of(around("no-rating", ratings(setting), amps, Dimension.CURRENT));
    }

    private static List<Double> ratings(final Setting setting) {
        return setting.gave(FUSE_SERIES)
                ? setting.series().ratings()
                : FuseSeriesTable.risingToMain().stream()
                        .map(FuseSeries::ratings)
                        .flatMap(List::stream)
                        .sorted()
                        .toList();
    }

    private static Optional<Check> notARow(final Setting setting, final double section) {
        final double mm2 = section / Dimension.AREA.scale();
        final List<Double> rows =
                setting.available().isEmpty()
                        ? setting.table().usableRows().stream()
                                .map(CableTable.Row::sectionMm2)
                                .toList()
                        : setting.available();
        return StandardSizes.holds(rows, mm2)
                ? Optional.empty()
                : Optional.of(around("no-size", rows, mm2, Dimension.AREA));
    }

    /** The standard sizes on both sides, or the one that is there. */
    private static Check around(
            final String key,
            final List<Double> sizes,
            final double size,
            final Dimension dimension) {
        final OptionalDouble below = StandardSizes.below(sizes, size);
        final OptionalDouble above = StandardSizes.atOrAbove(sizes, size);
        if (below.isPresent() && above.isPresent()) {
            return Check.of(key + ".between")
                    .with("{below}", text(below.getAsDouble(), dimension))
                    .with("{above}", text(above.getAsDouble(), dimension));
        }
        return Check.of(key + ".beyond")
                .with("{limit}", text(above.orElseGet(below::orElseThrow), dimension));
    }

    private static String text(final double size, final Dimension dimension) {
        return FigureText.of(size * dimension.scale(), dimension, 4);
    }

    private static Optional<Check> above(
            final Worked worked, final double amps, final Quantity limit, final String key) {
        return worked.value(limit).stream()
                .filter(most -> amps > most)
                .mapToObj(most -> Check.of(key).with("{limit}", Checks.text(limit, most)))
                .findFirst();
    }

    private static Optional<Check> below(
            final Worked worked, final double amps, final Quantity limit, final String key) {
        return worked.value(limit).stream()
                .filter(least -> amps < least)
                .mapToObj(least -> Check.of(key).with("{limit}", Checks.text(limit, least)))
                .findFirst();
    }
}
