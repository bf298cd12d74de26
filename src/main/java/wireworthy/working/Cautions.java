package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;
import wireworthy.rules.Voltages;
import wireworthy.texts.TextBundle;

/** What could hurt someone in the numbers of a question, worst first. */
public final class Cautions {
    private static final TextBundle TEXTS = new TextBundle("cautions");

    private static final double EVEN = 1e-9;
    private static final double EXTRA_LOW = 60;

    private final Question question;
    private final Worked worked;
    private final Setting setting;
    private final List<Caution> found = new ArrayList<>();

    private Cautions(final Question question, final Worked worked) {
        this.question = question;
        this.worked = worked;
        this.setting = worked.plan().setting();
    }

    /**
     * The cautions of a question.
     *
     * @param question what was asked
     * @param worked the same givens, worked as widely as they allow
     */
    public static List<Caution> of(final Question question, final Worked worked) {
        final Cautions cautions = new Cautions(question, worked);
        cautions.fuse();
        cautions.loadAboveCable();
        cautions.source();
        cautions.drop();
        cautions.chassis();
        cautions.supply();
        cautions.found.sort(Comparator.comparing(Caution::danger));
        return List.copyOf(cautions.found);
    }

    private void add(final String id, final Danger danger, final String text) {
        found.add(new Caution(id, danger, text));
    }

    private void fuse() {
        final OptionalDouble fuse = worked.value(FUSE);
        final OptionalDouble ceiling = worked.value(FUSE_CEILING);
        if (fuse.isPresent() && ceiling.isPresent() && above(fuse, ceiling)) {
            add(
                    "fuse-above-cable",
                    Danger.FIRE,
                    TEXTS.of(
                            "fuse-above-cable",
                            "fuse",
                            amps(fuse),
                            "ceiling",
                            ceilingText(ceiling)));
        }
        if (asked(FUSE) && fuse.isEmpty() && worked.problem(FUSE).isEmpty()) {
            noRating(ceiling);
        }
        if (fuse.isPresent() && worked.typed(Ref.circuit(FUSE)).isPresent()) {
            belowFloor(fuse.getAsDouble());
        }
        if (asked(FUSE) || asked(MAIN_FUSE)) {
            ratedVoltage();
            breaking();
        }
    }

    private void noRating(final OptionalDouble ceiling) {
        final OptionalDouble floor = worked.value(FUSE_FLOOR);
        final String least = FigureText.roundedUp(floor.orElse(0), Dimension.CURRENT);
        if (ceiling.isPresent() && setting.series().atOrAbove(floor.orElse(0)).isPresent()) {
            add(
                    "no-rating-fits",
                    Danger.FIRE,
                    TEXTS.of(
                            "no-rating-fits",
                            "series",
                            setting.series().words(),
                            "floor",
                            least,
                            "ceiling",
                            ceilingText(ceiling)));
        } else {
            add(
                    "no-rating-fits",
                    Danger.FIRE,
                    TEXTS.of(
                            "series-ends-below",
                            "series",
                            setting.series().words(),
                            "floor",
                            least,
                            "others",
                            othersReaching(floor.orElse(0))));
        }
    }

    private static String othersReaching(final double floor) {
        final String series =
                FuseSeriesTable.risingToMain().stream()
                        .filter(each -> each.atOrAbove(floor).isPresent())
                        .map(FuseSeries::words)
                        .collect(Collectors.joining("; "));
        return series.isEmpty() ? TEXTS.of("split") : TEXTS.of("others-reach", "series", series);
    }

    private void belowFloor(final double fuse) {
        final OptionalDouble floor = worked.value(FUSE_FLOOR);
        final OptionalDouble current = worked.value(CIRCUIT_CURRENT);
        if (current.isPresent() && fuse < current.getAsDouble() * (1 - EVEN)) {
            add(
                    "fuse-below-floor",
                    Danger.WILL_NOT_WORK,
                    TEXTS.of(
                            "fuse-below-current",
                            "fuse",
                            FigureText.of(fuse, Dimension.CURRENT),
                            "current",
                            FigureText.of(current.getAsDouble(), Dimension.CURRENT)));
        } else if (floor.isPresent() && fuse < floor.getAsDouble() * (1 - EVEN)) {
            add(
                    "fuse-below-floor",
                    Danger.WILL_NOT_WORK,
                    TEXTS.of(
                            "fuse-below-floor",
                            "fuse",
                            FigureText.of(fuse, Dimension.CURRENT),
                            "floor",
                            FigureText.roundedUp(floor.getAsDouble(), Dimension.CURRENT)));
        }
    }

    private void ratedVoltage() {
        final OptionalDouble supply = worked.value(SUPPLY_VOLTAGE);
        final List<Double> ratings = setting.series().voltageRatings();
        final OptionalDouble given = worked.value(FUSE_VOLTAGE);
        final double highest = Voltages.highestCharging(supply.orElse(0));
        if (supply.isEmpty() || (ratings.isEmpty() && given.isEmpty())) {
            return;
        }
        final double rated = given.isPresent() ? given.getAsDouble() : ratings.get(0);
        if (rated < highest * (1 - EVEN)) {
            add(
                    "fuse-voltage-low",
                    Danger.FIRE,
                    TEXTS.of(
                            "fuse-voltage-low",
                            "rated",
                            FigureText.of(rated, Dimension.VOLTAGE),
                            "highest",
                            FigureText.of(highest, Dimension.VOLTAGE)));
        }
    }

    private void breaking() {
        final OptionalDouble fault = worked.value(SHORT_CIRCUIT_CURRENT);
        final OptionalDouble given = worked.value(BREAKING_CAPACITY);
        final OptionalDouble capacity =
                given.isPresent() ? given : setting.series().breakingCapacity();
        if (capacity.isEmpty()) {
            add(
                    "breaking-capacity-unknown",
                    Danger.NOT_KNOWN,
                    TEXTS.of("breaking-capacity-unknown"));
        } else if (fault.isPresent() && above(fault, capacity)) {
            add(
                    "breaking-capacity-low",
                    Danger.FIRE,
                    TEXTS.of(
                            "breaking-capacity-low",
                            "fault",
                            amps(fault),
                            "capacity",
                            amps(capacity)));
        }
    }

    private void loadAboveCable() {
        final OptionalDouble current = worked.value(CIRCUIT_CURRENT);
        final OptionalDouble ampacity = worked.value(AMPACITY);
        if (current.isPresent() && ampacity.isPresent() && above(current, ampacity)) {
            add(
                    "current-above-cable",
                    Danger.FIRE,
                    TEXTS.of(
                            "current-above-cable",
                            "current",
                            amps(current),
                            "ampacity",
                            ceilingText(ampacity)));
        }
    }

    private void source() {
        if (worked.value(SHORT_CIRCUIT_CURRENT).isPresent() && asked(SHORT_CIRCUIT_CURRENT)) {
            add("short-circuit", Danger.FIRE, TEXTS.of("short-circuit"));
        }
        if (worked.value(ADIABATIC_TIME).isPresent()) {
            add("adiabatic-estimate", Danger.FIRE, TEXTS.of("adiabatic-estimate"));
        }
    }

    private void drop() {
        final OptionalDouble drop = worked.value(DROP);
        final OptionalDouble limit = Remedies.limit(worked);
        if (drop.isEmpty() || limit.isEmpty()) {
            return;
        }
        if (above(drop, limit)) {
            add(
                    "drop-over-limit",
                    Danger.ofLosing(
                            drop.getAsDouble(), worked.value(SUPPLY_VOLTAGE).orElse(Double.NaN)),
                    TEXTS.of(
                            "drop-over-limit",
                            "drop",
                            FigureText.of(drop.getAsDouble(), Dimension.VOLTAGE),
                            "limit",
                            FigureText.of(limit.getAsDouble(), Dimension.VOLTAGE)));
        } else {
            WarmDrop.of(worked).ifPresent(warm -> onlyCold(warm, limit.getAsDouble()));
        }
    }

    private void onlyCold(final double warm, final double limit) {
        if (warm > limit * (1 + EVEN)) {
            add(
                    "limit-met-only-cold",
                    Danger.ONLY_JUST,
                    TEXTS.of(
                            "limit-met-only-cold",
                            "warm",
                            FigureText.of(warm, Dimension.VOLTAGE),
                            "limit",
                            FigureText.of(limit, Dimension.VOLTAGE),
                            "way",
                            HoldingSection.told(worked, 0)));
        }
    }

    private void chassis() {
        if (setting.chassis() && worked.value(LOOP_RESISTANCE).isPresent() && !given(RESISTANCE)) {
            add("chassis-not-counted", Danger.WILL_NOT_WORK, TEXTS.of("chassis-not-counted"));
        }
    }

    private void supply() {
        final OptionalDouble volts = worked.value(SUPPLY_VOLTAGE);
        if (volts.isPresent() && volts.getAsDouble() > EXTRA_LOW) {
            add("not-extra-low-voltage", Danger.FIRE, TEXTS.of("not-extra-low-voltage"));
        }
    }

    private boolean asked(final Quantity quantity) {
        return question.find().contains(quantity);
    }

    private boolean given(final Quantity quantity) {
        return worked.typed(Ref.circuit(quantity)).isPresent();
    }

    private static boolean above(final OptionalDouble value, final OptionalDouble limit) {
        return value.getAsDouble() > limit.getAsDouble() * (1 + EVEN);
    }

    private static String amps(final OptionalDouble value) {
        return FigureText.of(value.getAsDouble(), Dimension.CURRENT);
    }

    private static String ceilingText(final OptionalDouble value) {
        return FigureText.roundedDown(value.getAsDouble(), Dimension.CURRENT);
    }
}
