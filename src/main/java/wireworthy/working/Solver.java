package wireworthy.working;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.texts.TextBundle;

/** Works questions; the plan for each shape is found once and kept. Safe from several threads. */
public final class Solver {
    private static final TextBundle REFUSALS = new TextBundle("refusals");

    private static final int MOST_PLANS = 5000;
    private static final double CONTRADICTION = 0.01;

    private record Prepared(
            Plan plan, Plan around, Map<Ref, Plan> checks, Map<Quantity, List<Quantity>> missing) {}

    private static final List<Quantity> AROUND =
            List.of(
                    Quantity.CIRCUIT_CURRENT,
                    Quantity.DROP,
                    Quantity.DROP_LIMIT,
                    Quantity.LOOP_RESISTANCE,
                    Quantity.LOOP_LENGTH,
                    Quantity.ONE_WAY_LENGTH,
                    Quantity.SECTION,
                    Quantity.SUPPLY_VOLTAGE,
                    Quantity.FUSE_FLOOR,
                    Quantity.FUSE_CEILING,
                    Quantity.AMPACITY,
                    Quantity.SECTION_FOR_AMPACITY,
                    Quantity.SHORT_CIRCUIT_CURRENT);

    private final Map<String, Prepared> prepared = new ConcurrentHashMap<>();

    /**
     * Works a question.
     *
     * @throws Unworkable where givens contradict each other or nothing asked can be worked
     */
    public Worked work(final Question question) {
        return work(question, prepared(question));
    }

    /**
     * Works everything around a question that its givens allow: what cautions and remedies look at.
     * Nothing is refused; what can't be had is left out.
     */
    public Worked widely(final Question question) {
        final Question wide =
                new Question(
                        question.figures(),
                        question.names(),
                        question.loads(),
                        question.available(),
                        List.copyOf(around(question.find())),
                        Map.of());
        final Plan plan = prepared(question).around();
        return new Worked(wide, plan, plan.run(plan.start(values(wide.figures()))), Map.of());
    }

    private static Set<Quantity> around(final List<Quantity> find) {
        final Set<Quantity> all = new LinkedHashSet<>(find);
        all.addAll(AROUND);
        return all;
    }

    private static double[] values(final Map<Ref, Reading.Read> figures) {
        final double[] values = new double[figures.size()];
        int next = 0;
        for (final Reading.Read figure : figures.values()) {
            values[next++] = figure.value();
        }
        return values;
    }

    private Worked work(final Question question, final Prepared ready) {
        refuseNonsense(question);
        ready.checks().forEach((given, plan) -> check(question, given, plan));
        final double[] values = ready.plan().run(ready.plan().start(values(question.figures())));
        return new Worked(question, ready.plan(), values, ready.missing()).checked();
    }

    private Prepared prepared(final Question question) {
        if (prepared.size() > MOST_PLANS) {
            prepared.clear();
        }
        return prepared.computeIfAbsent(Shape.key(question), key -> prepare(question));
    }

    private static Prepared prepare(final Question question) {
        final Shape shape = Shape.of(question);
        final Planner planner = new Planner(shape);
        final Plan plan = planner.plan();
        final Map<Quantity, List<Quantity>> missing = new LinkedHashMap<>();
        for (final Quantity asked : shape.find()) {
            if (plan.refsOf(asked).isEmpty()) {
                missing.put(asked, planner.missingFor(asked));
            }
        }
        return new Prepared(plan, planner.plan(around(shape.find())), planner.checks(), missing);
    }

    private static void refuseNonsense(final Question question) {
        final boolean chassis =
                "chassis".equals(question.names().getOrDefault(Quantity.RETURN, ""));
        final boolean boat =
                "boat-cable".equals(question.names().getOrDefault(Quantity.CABLE_TABLE, ""));
        if (chassis && boat) {
            throw new Unworkable("given.return", REFUSALS.of("no-chassis"));
        }
    }

    /** Says which given the others contradict by more than 1 %. */
    private static void check(final Question question, final Ref given, final Plan plan) {
        final Map<Ref, Reading.Read> others = new LinkedHashMap<>(question.figures());
        final double typed = Optional.ofNullable(others.remove(given)).orElseThrow().value();
        final double worked = plan.value(given, plan.run(plan.start(values(others))));
        if (Math.abs(worked - typed) > CONTRADICTION * Math.abs(typed)) {
            throw new Unworkable(
                    "given." + given.quantity().id(), says(plan, given, typed, worked));
        }
    }

    private static String says(
            final Plan plan, final Ref given, final double typed, final double worked) {
        final String others =
                plan.steps().stream()
                        .flatMap(step -> step.direction().formula().inputs().stream())
                        .filter(ref -> plan.steps().stream().noneMatch(gives(ref)))
                        .distinct()
                        .map(ref -> ref.quantity().words())
                        .collect(Collectors.joining(", "));
        return REFUSALS.of(
                "contradict",
                "quantity",
                given.quantity().words(),
                "typed",
                FigureText.of(typed, given.quantity().dimension()),
                "others",
                others,
                "worked",
                FigureText.of(worked, given.quantity().dimension()));
    }

    private static java.util.function.Predicate<Step> gives(final Ref ref) {
        return step -> step.direction().output().equals(ref);
    }
}
