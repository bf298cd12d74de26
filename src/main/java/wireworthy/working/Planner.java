package wireworthy.working;

import java.util.ArrayList;
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

    Planner(final Shape shape) {
        this.shape = shape;
        this.directions = holding(shape);
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
        final RoadMap map = map();
        final Map<Ref, Direction> lines = new LinkedHashMap<>();
        final List<Ref> sources = new ArrayList<>();
        asked().filter(map::reaches).forEach(ref -> map.linesTo(ref, lines, sources));
        final Set<Ref> assumed = new LinkedHashSet<>(sources);
        assumed.removeAll(shape.figures());
        return new Plan(
                shape.setting(),
                shape.figures(),
                List.copyOf(assumed),
                List.copyOf(lines.values()));
    }

    private java.util.stream.Stream<Ref> asked() {
        return shape.find().stream().flatMap(this::refs);
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
        final RoadMap map = fromGivens(directions, ref -> true);
        assume(map);
        return map;
    }

    private RoadMap fromGivens(final List<Direction> roads, final Predicate<Ref> wanted) {
        final RoadMap map = new RoadMap(roads);
        shape.figures().stream().filter(wanted).forEach(ref -> map.start(ref, 0, false));
        map.explore();
        return map;
    }

    private void assume(final RoadMap map) {
        Assumptions.numeric().stream()
                .filter(q -> Assumptions.of(q, shape.setting()).isPresent())
                .forEach(q -> map.start(Ref.circuit(q), ASSUMING, true));
        map.explore();
    }

    /** What would have to be given besides, to find a quantity that can't be had; may be empty. */
    List<Quantity> missingFor(final Quantity quantity) {
        final RoadMap map = map();
        final List<Quantity> missing = missing(map, quantity);
        return missing.isEmpty() ? missing(fromGivens(directions, ref -> true), quantity) : missing;
    }

    private List<Quantity> missing(final RoadMap map, final Quantity quantity) {
        final Set<Ref> known = new LinkedHashSet<>();
        Missing.PRIMARY.stream().map(Ref::circuit).filter(map::reaches).forEach(known::add);
        Missing.offer(map, quantity);
        final Ref asked = refs(quantity).findFirst().orElseThrow();
        if (!map.reaches(asked)) {
            return List.of();
        }
        final List<Ref> sources = new ArrayList<>();
        map.linesTo(asked, new LinkedHashMap<>(), sources);
        return sources.stream()
                .filter(ref -> !known.contains(ref) && !shape.figures().contains(ref))
                .map(Ref::quantity)
                .filter(Missing.PRIMARY::contains)
                .toList();
    }

    /** For each given that the other givens also determine, the plan that works it from them. */
    Map<Ref, Plan> checks() {
        final List<Direction> relations =
                directions.stream().filter(d -> d.reading() == Reading.RELATION).toList();
        final Map<Ref, Plan> checks = new LinkedHashMap<>();
        for (final Ref given : shape.figures()) {
            if (relations.stream().anyMatch(d -> d.output().equals(given))) {
                check(given, relations, checks);
            }
        }
        return checks;
    }

    private void check(
            final Ref given, final List<Direction> relations, final Map<Ref, Plan> checks) {
        final RoadMap map = fromGivens(relations, ref -> !ref.equals(given));
        if (map.reaches(given)) {
            final Map<Ref, Direction> lines = new LinkedHashMap<>();
            map.linesTo(given, lines, new ArrayList<>());
            final List<Ref> others =
                    shape.figures().stream().filter(ref -> !ref.equals(given)).toList();
            checks.put(
                    given,
                    new Plan(shape.setting(), others, List.of(), List.copyOf(lines.values())));
        }
    }
}
