package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.CONDUCTOR_TEMPERATURE;
import static wireworthy.rules.Quantity.RESISTIVITY;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.marking.Evidence;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Worked;

/** The same sum by the other published figures of what copper resists. */
final class CopperFigures {
    /** At 20 degC, in use besides 0.0172; the table of copper has their sources. */
    static final List<Reading.Read> OTHERS =
            Stream.of("0.0175", "0.0178", "0.018", "0.0168", "0.0185", "0.0164")
                    .map(each -> QuestionReader.figure("", RESISTIVITY, each + " ohm mm2/m"))
                    .toList();

    private static final List<Quantity> SAY_ANOTHER = List.of(RESISTIVITY, CONDUCTOR_TEMPERATURE);

    private final Solver solver;
    private final Worked worked;
    private final Map<Reading.Read, Worked> others = new HashMap<>();
    private final Map<Reading.Read, List<Mark>> marks = new HashMap<>();

    CopperFigures(final Solver solver, final Worked worked) {
        this.solver = solver;
        this.worked = worked;
    }

    /** Whether the question leaves open what copper resists. */
    boolean isOpen() {
        return worked.plan().assumed().contains(Ref.circuit(RESISTIVITY))
                && SAY_ANOTHER.stream()
                        .map(Ref::circuit)
                        .noneMatch(worked.question().figures()::containsKey);
    }

    /** Worked once. */
    Worked worked(final Reading.Read resistivity) {
        return others.computeIfAbsent(resistivity, each -> solver.work(with(each)));
    }

    /** The mark that a figure gets by another copper; all are marked once. */
    Optional<Mark> mark(final Reading.Read resistivity, final Ref ref) {
        return marks
                .computeIfAbsent(resistivity, each -> Marker.marks(worked(each), Evidence.PAGE))
                .stream()
                .filter(other -> other.ref().equals(ref))
                .findFirst();
    }

    private Question with(final Reading.Read resistivity) {
        final Question question = worked.question();
        final Map<Ref, Reading.Read> figures = new LinkedHashMap<>(question.figures());
        figures.put(Ref.circuit(RESISTIVITY), resistivity);
        return new Question(
                figures,
                question.names(),
                question.loads(),
                question.available(),
                question.find(),
                question.answers());
    }
}
