package wireworthy.working;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import wireworthy.rules.Assumptions;
import wireworthy.rules.Direction;
import wireworthy.rules.Direction.Reading;
import wireworthy.rules.ListRules;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.RuleBook;
import wireworthy.rules.Setting;

/** Finds the plan for a shape of question. */
final class Planner {
    private static final double ASSUMING = 0.1;

    private final Shape shape;
    private final List<Direction> directions;
    private final Network network;
    private final RoadMap map;

    Planner(final Shape shape) {
        this.shape = shape;
        this.directions = holding(shape);
        this.network = new Network(directions);
        this.map = map();
    }

    private static List<Direction> holding(final Shape shape) {
        final List<Direction> all = new ArrayList<>();
        if (!shape.loads().isEmpty()) {
            all.addAll(ListRules.joining(shape.loads()));
        }
        for (final Direction direction : RuleBook.directions()) {
            if (shape.loads().isEmpty() || !direction.ofLoad()) {
                if (direction.holds().test(shape.setting())) {
                    all.add(direction);
                }
            } else if (direction.output().quantity().ofLoad()) {
                all.addAll(forEachLoad(direction, shape));
            }
        }
        return all;
    }

    private static List<Direction> forEachLoad(final Direction direction, final Shape shape) {
        final List<Direction> each = new ArrayList<>();
        for (int i = 0; i < shape.loads().size(); i++) {
            if (direction.holds().test(ofLoad(shape.setting(), shape.loads().get(i)))) {
                each.add(direction.forLoad(i + 1));
            }
        }
        return each;
    }

    private static Setting ofLoad(final Setting s, final Set<Quantity> load) {
        final Set<Quantity> given = EnumSet.copyOf(s.given());
        given.addAll(load);
        return new Setting(
                s.table(),
                s.series(),
                s.aluminium(),
                s.chassis(),
                s.engineSpace(),
                s.inThermalInsulation(),
                s.available(),
                given);
    }

    /** The plan for all of what is asked that can be had. */
    Plan plan() {
        return plan(shape.find());
    }

    /** The plan for all of these that can be had. */
    Plan plan(final Collection<Quantity> find) {
        final Map<Ref, Direction> lines = new LinkedHashMap<>();
        final List<Ref> sources = new ArrayList<>();
        find.stream()
                .flatMap(this::refs)
                .filter(map::reaches)
                .forEach(ref -> map.linesTo(ref, lines, sources));
        final Set<Ref> assumed = new LinkedHashSet<>(sources);
        assumed.removeAll(shape.figures());
        return new Plan(
                shape.setting(),
                shape.figures(),
                List.copyOf(assumed),
                List.copyOf(lines.values()));
    }

    /** What an asked quantity stands for: the circuit's own, or that of each load of the list. */
    private java.util.stream.Stream<Ref> refs(final Quantity quantity) {
        if (shape.loads().isEmpty() || !quantity.ofLoad()) {
            return java.util.stream.Stream.of(Ref.circuit(quantity));
        }
        return java.util.stream.IntStream.rangeClosed(1, shape.loads().size())
                .mapToObj(load -> new Ref(quantity, load));
    }

    private RoadMap map() {
        final RoadMap all = fromGivens(network, ref -> true);
        assume(all);
        return all;
    }

    private RoadMap fromGivens(final Network among, final Predicate<Ref> wanted) {
        final RoadMap from = new RoadMap(among);
        shape.figures().stream().filter(wanted).forEach(ref -> from.start(ref, 0, false));
        from.explore();
        return from;
    }

    private void assume(final RoadMap from) {
        Assumptions.numeric().stream()
                .filter(q -> Assumptions.of(q, shape.setting()).isPresent())
                .forEach(q -> from.start(Ref.circuit(q), ASSUMING, true));
        from.explore();
    }

    /** What would have to be given besides, to find a quantity that can't be had; may be empty. */
    List<Quantity> missingFor(final Quantity quantity) {
        final List<Quantity> missing = missing(map(), quantity);
        return missing.isEmpty() ? missing(fromGivens(network, ref -> true), quantity) : missing;
    }

    private List<Quantity> missing(final RoadMap from, final Quantity quantity) {
        final Set<Ref> known = new LinkedHashSet<>();
        Missing.PRIMARY.stream().map(Ref::circuit).filter(from::reaches).forEach(known::add);
        Missing.offer(from, quantity);
        final Ref asked = refs(quantity).findFirst().orElseThrow();
        if (!from.reaches(asked)) {
            return List.of();
        }
        final List<Ref> sources = new ArrayList<>();
        from.linesTo(asked, new LinkedHashMap<>(), sources);
        return sources.stream()
                .filter(ref -> !known.contains(ref) && !shape.figures().contains(ref))
                .map(Ref::quantity)
                .filter(Missing.PRIMARY::contains)
                .toList();
    }

    /** For each given that the other givens also determine, the plan that works it from them. */
    Map<Ref, Plan> checks() {
        final Network relations =
                new Network(
                        directions.stream().filter(d -> d.reading() == Reading.RELATION).toList());
        final Map<Ref, Plan> checks = new LinkedHashMap<>();
        for (final Ref given : shape.figures()) {
            if (relations.gives(given)) {
                check(given, relations, checks);
            }
        }
        return checks;
    }

    private void check(final Ref given, final Network relations, final Map<Ref, Plan> checks) {
        final RoadMap others = fromGivens(relations, ref -> !ref.equals(given));
        if (others.reaches(given)) {
            final Map<Ref, Direction> lines = new LinkedHashMap<>();
            others.linesTo(given, lines, new ArrayList<>());
            final List<Ref> givens =
                    shape.figures().stream().filter(ref -> !ref.equals(given)).toList();
            checks.put(
                    given,
                    new Plan(shape.setting(), givens, List.of(), List.copyOf(lines.values())));
        }
    }
}
