package wireworthy.vehicle.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;

/**
 * Which fuses fit: from the floor, so that it does not open for nothing, to the ceiling, so that it
 * opens before the cable overheats.
 *
 * @param floor A; empty where the current is not known
 * @param ceiling A, of the weakest cable behind the fuse; empty where the cable is not known
 * @param series the kind of fuse the ratings are of
 * @param between the ratings that fit, A, rising; empty unless floor and ceiling are known
 * @param chosen the builder's fuse, A; empty where none was typed
 */
public record FuseWindow(
        OptionalDouble floor,
        OptionalDouble ceiling,
        FuseSeries series,
        List<Double> between,
        OptionalDouble chosen) {
    public FuseWindow {
        between = List.copyOf(between);
    }

    static FuseWindow of(
            final OptionalDouble floor,
            final OptionalDouble ceiling,
            final FuseSeries wanted,
            final boolean seriesGiven,
            final OptionalDouble chosen) {
        final FuseSeries series = seriesGiven ? wanted : reaching(floor, wanted);
        final List<Double> between =
                floor.isEmpty() || ceiling.isEmpty()
                        ? List.of()
                        : series.ratings().stream()
                                .filter(rating -> atLeast(rating, floor.getAsDouble()))
                                .filter(rating -> atLeast(ceiling.getAsDouble(), rating))
                                .toList();
        return new FuseWindow(floor, ceiling, series, between, chosen);
    }

    /** Where no series was chosen: the first one that reaches the floor. */
    private static FuseSeries reaching(final OptionalDouble floor, final FuseSeries usual) {
        return FuseSeriesTable.risingToMain().stream()
                .filter(each -> each.atOrAbove(floor.orElse(0)).isPresent())
                .findFirst()
                .orElse(usual);
    }

    private static boolean atLeast(final double one, final double other) {
        return one > other || StandardSizes.same(one, other);
    }

    /** Whether both ends are known. */
    public boolean known() {
        return floor.isPresent() && ceiling.isPresent();
    }

    /** The builder's fuse, or else the smallest that fits. */
    public OptionalDouble inUse() {
        return chosen.isPresent() || between.isEmpty() ? chosen : OptionalDouble.of(between.get(0));
    }

    /** Whether the builder's fuse is known not to be one of those that fit. */
    public boolean chosenUnfit() {
        return known() && chosen.isPresent() && between.stream().noneMatch(this::isChosen);
    }

    /** The fuse to buy: the builder's unless it does not fit, else the smallest that does. */
    public OptionalDouble fitting() {
        if (!chosenUnfit()) {
            return inUse();
        }
        return between.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(between.get(0));
    }

    /** Whether the builder's fuse would let the cable overheat. */
    public boolean chosenAboveCeiling() {
        return chosen.isPresent()
                && ceiling.isPresent()
                && !atLeast(ceiling.getAsDouble(), chosen.getAsDouble());
    }

    /** What to say where no fuse of the series is made for the builder's current. */
    Optional<FieldNote> notMade(final String where) {
        return chosen.isEmpty() || series.holds(chosen.getAsDouble())
                ? Optional.empty()
                : Optional.of(
                        FieldNote.wrong(
                                where,
                                Said.of(
                                        notMadeKey(),
                                        "series",
                                        series.words(),
                                        "fuse",
                                        FigureText.of(chosen.getAsDouble(), Dimension.CURRENT),
                                        "fitting",
                                        together(between),
                                        "ratings",
                                        listed(series.ratings()))));
    }

    /** One that does not fit is never offered beside those that do. */
    private String notMadeKey() {
        if (!known()) {
            return "window.not-made";
        }
        if (between.isEmpty()) {
            return "window.not-made.none";
        }
        return chosenAboveCeiling() ? "window.not-made.above" : "window.not-made.fit";
    }

    /** The window for people: which ratings fit, or why none does and what to change. */
    public String text() {
        if (!known()) {
            return floor.isEmpty()
                    ? Said.of("window.no-current")
                    : Said.of("window.at-least", "floor", up(floor.getAsDouble()));
        }
        return between.isEmpty()
                ? Said.of("window.none", "why", why())
                : Said.of(
                        between.size() == 1 ? "window.one" : "window",
                        "floor",
                        up(floor.getAsDouble()),
                        "ceiling",
                        down(ceiling.getAsDouble()),
                        "ratings",
                        together(between),
                        "series",
                        series.words());
    }

    /** Which of several ratings that fit to take, and why the others do, too; else empty. */
    public Optional<String> advice() {
        return between.size() < 2
                ? Optional.empty()
                : Optional.of(
                        Said.of(
                                adviceKey(),
                                "smallest",
                                FigureText.of(between.get(0), Dimension.CURRENT, 4),
                                "chosen",
                                FigureText.of(chosen.orElse(0), Dimension.CURRENT, 4)));
    }

    private String adviceKey() {
        if (between.stream().noneMatch(this::isChosen)) {
            return "window.take";
        }
        return isChosen(between.get(0)) ? "window.smallest" : "window.larger";
    }

    private boolean isChosen(final double rating) {
        return chosen.isPresent() && StandardSizes.same(rating, chosen.getAsDouble());
    }

    private static String together(final List<Double> ratings) {
        final int last = ratings.size() - 1;
        return last < 1
                ? listed(ratings)
                : Said.of(
                        "window.and",
                        "first",
                        listed(ratings.subList(0, last)),
                        "last",
                        listed(ratings.subList(last, last + 1)));
    }

    private static String listed(final List<Double> ratings) {
        return ratings.stream()
                .map(rating -> FigureText.number(rating, Dimension.CURRENT, 4))
                .collect(Collectors.joining(", "));
    }

    private String why() {
        final String least = up(floor.getAsDouble());
        final String most = down(ceiling.getAsDouble());
        if (!atLeast(ceiling.getAsDouble(), floor.getAsDouble())) {
            return Said.of("window.crossed", "least", least, "most", most);
        }
        return Said.of("window.no-rating", "series", series.words(), "least", least, "most", most);
    }

    private static String up(final double amps) {
        return FigureText.roundedUp(amps, Dimension.CURRENT);
    }

    private static String down(final double amps) {
        return FigureText.roundedDown(amps, Dimension.CURRENT);
    }
}
