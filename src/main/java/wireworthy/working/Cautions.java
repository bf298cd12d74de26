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

/** What could hurt someone in the numbers of a question, worst first. */
public final class Cautions {
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
                    "A fuse of "
                            + amps(fuse)
                            + " is above the "
                            + ceilingText(ceiling)
                            + " this cable can carry: the cable would overheat before the fuse"
                            + " opens. Take a thicker cable or a smaller fuse.");
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
        final String from =
                "No rating of the series "
                        + setting.series().id()
                        + " fits: the floor is "
                        + FigureText.roundedUp(floor.orElse(0), Dimension.CURRENT);
        if (ceiling.isPresent() && setting.series().atOrAbove(floor.orElse(0)).isPresent()) {
            add(
                    "no-rating-fits",
                    Danger.FIRE,
                    from
                            + " and the cable's ceiling is "
                            + ceilingText(ceiling)
                            + ". Never take a fuse above the ceiling: take a thicker cable, a"
                            + " cooler or roomier way for it, or split the circuit.");
        } else {
            add(
                    "no-rating-fits",
                    Danger.FIRE,
                    from + " and the series ends below it. " + othersReaching(floor.orElse(0)));
        }
    }

    private static String othersReaching(final double floor) {
        final String series =
                FuseSeriesTable.risingToMain().stream()
                        .filter(each -> each.atOrAbove(floor).isPresent())
                        .map(FuseSeries::id)
                        .collect(Collectors.joining(", "));
        return series.isEmpty()
                ? "Split the circuit."
                : "Series that reach it: " + series + "; or split the circuit.";
    }

    private void belowFloor(final double fuse) {
        final OptionalDouble floor = worked.value(FUSE_FLOOR);
        if (floor.isPresent() && fuse < floor.getAsDouble() * (1 - EVEN)) {
            add(
                    "fuse-below-floor",
                    Danger.WILL_NOT_WORK,
                    "A fuse of "
                            + FigureText.of(fuse, Dimension.CURRENT)
                            + " is below the floor of "
                            + FigureText.roundedUp(floor.getAsDouble(), Dimension.CURRENT)
                            + ": it may open for nothing, unless the appliance's maker names it.");
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
                    "A fuse rated "
                            + FigureText.of(rated, Dimension.VOLTAGE)
                            + " can't be trusted to put out the arc at up to "
                            + FigureText.of(highest, Dimension.VOLTAGE)
                            + " while charging: take one rated higher by its maker.");
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
                    Danger.FIRE,
                    "How large a short-circuit current this fuse can break is not known here: look"
                            + " up its breaking capacity and compare it with what the battery can"
                            + " drive.");
        } else if (fault.isPresent() && above(fault, capacity)) {
            add(
                    "breaking-capacity-low",
                    Danger.FIRE,
                    "The short-circuit current of "
                            + amps(fault)
                            + " is more than the "
                            + amps(capacity)
                            + " this fuse can break: it could burst and burn. Take a fuse of higher"
                            + " breaking capacity.");
        }
    }

    private void loadAboveCable() {
        final OptionalDouble current = worked.value(CIRCUIT_CURRENT);
        final OptionalDouble ampacity = worked.value(AMPACITY);
        if (current.isPresent() && ampacity.isPresent() && above(current, ampacity)) {
            add(
                    "current-above-cable",
                    Danger.FIRE,
                    "The circuit draws "
                            + amps(current)
                            + ", more than the "
                            + ceilingText(ampacity)
                            + " this cable can carry: it overheats. Take a thicker cable or split"
                            + " the circuit.");
        }
    }

    private void source() {
        if (worked.value(SHORT_CIRCUIT_CURRENT).isPresent() && asked(SHORT_CIRCUIT_CURRENT)) {
            add(
                    "short-circuit",
                    Danger.FIRE,
                    "Never try a short circuit: this current burns and throws molten metal. A fuse"
                            + " at the battery, before anything else.");
        }
        if (worked.value(ADIABATIC_TIME).isPresent()) {
            add(
                    "adiabatic-estimate",
                    Danger.FIRE,
                    "The time is an order of magnitude, never a verdict that a cable survives.");
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
                    Danger.WILL_NOT_WORK,
                    "The cable takes "
                            + FigureText.of(drop.getAsDouble(), Dimension.VOLTAGE)
                            + ", more than the limit of "
                            + FigureText.of(limit.getAsDouble(), Dimension.VOLTAGE)
                            + ".");
        } else {
            WarmDrop.of(worked).ifPresent(warm -> onlyCold(warm, limit.getAsDouble()));
        }
    }

    private void onlyCold(final double warm, final double limit) {
        if (warm > limit * (1 + EVEN)) {
            add(
                    "limit-met-only-cold",
                    Danger.WILL_NOT_WORK,
                    "The limit is met only by cold copper of full section: a real cable (IEC 60228"
                            + " class 5 maximum) at 60 °C takes up to "
                            + FigureText.of(warm, Dimension.VOLTAGE)
                            + ", above the limit of "
                            + FigureText.of(limit, Dimension.VOLTAGE)
                            + ".");
        }
    }

    private void chassis() {
        if (setting.chassis() && worked.value(LOOP_RESISTANCE).isPresent() && !given(RESISTANCE)) {
            add(
                    "chassis-not-counted",
                    Danger.WILL_NOT_WORK,
                    "The way back through the chassis is not counted: measure its resistance and"
                            + " give it as \"resistance\". Joints and rust can make it the larger"
                            + " part.");
        }
    }

    private void supply() {
        final OptionalDouble volts = worked.value(SUPPLY_VOLTAGE);
        if (volts.isPresent() && volts.getAsDouble() > EXTRA_LOW) {
            add(
                    "not-extra-low-voltage",
                    Danger.FIRE,
                    "Above 60 V direct current this is no longer extra-low voltage: it can kill."
                            + " Leave it to a licensed person.");
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
