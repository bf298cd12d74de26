package wireworthy.vehicle.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.vehicle.Entries;
import wireworthy.working.Assumed;
import wireworthy.working.Caution;
import wireworthy.working.Cautions;
import wireworthy.working.Line;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/**
 * A question of the check, worked.
 *
 * @param worked what was asked; empty where nothing of it can be worked
 * @param around the same as widely as the givens allow, for cautions and ways out
 * @param found the values of the circuit itself, told once and kept, as all that follows
 */
record Sums(
        Optional<Worked> worked,
        Optional<Worked> around,
        List<Found> found,
        List<Line> working,
        List<Assumed> assumed,
        List<Way> ways,
        List<Mark> marks,
        List<Caution> cautions,
        List<FieldNote> notes) {
    private static final String ANSWERS = "answers";

    /** Works all that can be worked, and marks the builder's own figures. */
    static Sums of(
            final Solver solver,
            final Givens givens,
            final List<Quantity> find,
            final Entries<Quantity> answers) {
        final List<FieldNote> notes = new ArrayList<>(givens.notes());
        if (givens.blocked()) {
            return nothing(notes);
        }
        try {
            final Question question = QuestionReader.read(question(givens, find, answers));
            final Worked worked = solver.work(question);
            final Worked around = solver.widely(question);
            notes.addAll(offTheWay(worked));
            final List<Caution> cautions = Cautions.of(question, around);
            if (worked.typed(Ref.circuit(Quantity.FUSE)).isPresent()) {
                notes.addAll(notKnown(cautions));
            }
            final List<Found> found = Found.of(worked, around);
            return new Sums(
                    Optional.of(worked),
                    Optional.of(around),
                    found,
                    Telling.lines(worked),
                    Assumed.of(worked),
                    Way.of(around, 0),
                    new WorkedThrough(found).told(PageMarks.of(solver, worked)),
                    cautions.stream().filter(each -> !isOpen(each)).toList(),
                    List.copyOf(notes));
        } catch (final Unworkable why) {
            notes.add(FieldNote.wrong(why.where(), sentence(InWords.of(why))));
            return nothing(notes);
        }
    }

    private static Sums nothing(final List<FieldNote> notes) {
        return new Sums(
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.copyOf(notes));
    }

    private static ObjectNode question(
            final Givens givens, final List<Quantity> find, final Entries<Quantity> answers) {
        final ObjectNode question = JsonNodeFactory.instance.objectNode();
        question.set("given", givens.json());
        final Set<Quantity> asked = new LinkedHashSet<>(find);
        asked.addAll(answers.typed().keySet());
        final ArrayNode list = question.putArray("find");
        asked.forEach(each -> list.add(each.id()));
        final ObjectNode own = question.putObject(ANSWERS);
        answers.typed().forEach((quantity, text) -> own.put(quantity.id(), text));
        return question;
    }

    private static List<FieldNote> offTheWay(final Worked worked) {
        return worked.question().answers().keySet().stream()
                .filter(quantity -> Marker.onTheWay(worked, quantity).isEmpty())
                .map(quantity -> notMarked(worked, quantity))
                .toList();
    }

    private static FieldNote notMarked(final Worked worked, final Quantity quantity) {
        return FieldNote.missing(
                ANSWERS + "." + quantity.id(),
                worked.problem(quantity)
                        .map(why -> Said.of("not-yet", "why", InWords.of(why)))
                        .orElse(Said.of("given-already")));
    }

    /** What a fuse can break is asked about where it is not known: nothing tells that it is low. */
    private static List<FieldNote> notKnown(final List<Caution> cautions) {
        return cautions.stream()
                .filter(Sums::isOpen)
                .map(
                        each ->
                                FieldNote.missing(
                                        "given." + Quantity.BREAKING_CAPACITY.id(), each.text()))
                .toList();
    }

    private static boolean isOpen(final Caution caution) {
        return caution.id().equals("breaking-capacity-unknown");
    }

    static String sentence(final String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** These with more cautions. */
    Sums cautioned(final List<Caution> more) {
        final List<Caution> all = Stream.concat(cautions.stream(), more.stream()).toList();
        return new Sums(worked, around, found, working, assumed, ways, marks, all, notes);
    }

    /** These with other marks. */
    Sums marked(final List<Mark> others) {
        return new Sums(worked, around, found, working, assumed, ways, others, cautions, notes);
    }

    /** These where the hours of a load are not known. */
    Sums allDay() {
        return new Sums(
                        worked,
                        around,
                        found.stream().map(AllDay::told).toList(),
                        working.stream().map(AllDay::told).toList(),
                        assumed,
                        ways,
                        marks,
                        cautions,
                        notes)
                .inQuestion();
    }

    /** Own figures that go by the hours a day can't be marked without them. */
    Sums inQuestion() {
        return marked(worked.map(it -> AllDay.told(marks, it)).orElse(marks));
    }

    /** These with what was found another way, and what is said of own figures of it. */
    Sums with(final List<Found> others, final List<FieldNote> said) {
        final List<String> at = said.stream().map(FieldNote::where).toList();
        return new Sums(
                worked,
                around,
                Stream.concat(found.stream(), others.stream()).toList(),
                working,
                assumed,
                ways,
                marks,
                cautions,
                Stream.concat(
                                notes.stream().filter(note -> !at.contains(note.where())),
                                said.stream())
                        .toList());
    }

    /** SI value of the circuit itself; empty where it can't be worked. */
    OptionalDouble value(final Quantity quantity) {
        return worked.map(each -> each.value(quantity)).orElseGet(OptionalDouble::empty);
    }

    /** The fuses that fit, up to a ceiling; of the series of the question. */
    FuseWindow window(final OptionalDouble ceiling, final boolean seriesGiven) {
        final FuseSeries series =
                worked.map(each -> each.plan().setting().series())
                        .orElse(FuseSeriesTable.all().get(0));
        return FuseWindow.of(
                value(Quantity.FUSE_FLOOR), ceiling, series, seriesGiven, typed(Quantity.FUSE));
    }

    /** A figure that was typed, SI; empty where none was. */
    OptionalDouble typed(final Quantity quantity) {
        return worked.flatMap(each -> each.typed(Ref.circuit(quantity)))
                .map(read -> OptionalDouble.of(read.value()))
                .orElseGet(OptionalDouble::empty);
    }

    CheckedPart part() {
        return part(Optional.empty(), List.of());
    }

    /** As a part of the vehicle, with a caution and notes more. */
    CheckedPart part(final Optional<Caution> besides, final List<FieldNote> more) {
        final List<Caution> all =
                Stream.concat(besides.stream(), cautions.stream())
                        .sorted(Comparator.comparing(Caution::danger))
                        .toList();
        final List<FieldNote> said = Stream.concat(more.stream(), notes.stream()).toList();
        return new CheckedPart(found, marks, all, said, working, assumed);
    }
}
