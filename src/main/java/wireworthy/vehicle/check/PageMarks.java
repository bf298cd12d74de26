package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

/**
 * Marks a builder's own figures. What stands on a page can't be asked about, and it may go by
 * another published resistivity of copper than this program: that is no slip, and said.
 */
final class PageMarks {
    /** At 20 degC, in use besides 0.0172; the table of copper has their sources. */
    private static final List<Reading.Read> RESISTIVITIES =
            List.of("0.0175", "0.0178", "0.018", "0.0168").stream()
                    .map(each -> QuestionReader.figure("", RESISTIVITY, each + " ohm mm2/m"))
                    .toList();

    private static final List<Quantity> SAY_ANOTHER = List.of(RESISTIVITY, CONDUCTOR_TEMPERATURE);

    private final Solver solver;
    private final Worked worked;

    private PageMarks(final Solver solver, final Worked worked) {
        this.solver = solver;
        this.worked = worked;
    }

    /** The marks of all figures that stand on the way, in the order of the working. */
    static List<Mark> of(final Solver solver, final Worked worked) {
        final List<Mark> marks = Marker.marks(worked, Evidence.PAGE);
        final PageMarks page = new PageMarks(solver, worked);
        return marks.stream().anyMatch(PageMarks::unexplained) && page.byCopperAsUsual()
                ? marks.stream().map(page::reconsidered).toList()
                : marks;
    }

    private static boolean unexplained(final Mark mark) {
        return !mark.isSound() && !mark.asksBack() && mark.explained().isEmpty();
    }

    /** Whether the question leaves open what copper resists, and its answer hangs on it. */
    private boolean byCopperAsUsual() {
        return worked.plan().assumed().contains(Ref.circuit(RESISTIVITY))
                && SAY_ANOTHER.stream()
                        .map(Ref::circuit)
                        .noneMatch(worked.question().figures()::containsKey);
    }

    private Mark reconsidered(final Mark mark) {
        if (!unexplained(mark)) {
            return mark;
        }
        return RESISTIVITIES.stream()
                .flatMap(each -> by(each, mark).filter(Mark::isSound).stream())
                .findFirst()
                .or(
                        () ->
                                RESISTIVITIES.stream()
                                        .flatMap(each -> by(each, mark).stream())
                                        .filter(it -> it.diagnosis().settled())
                                        .findFirst())
                .orElse(mark);
    }

    private Optional<Mark> by(final Reading.Read resistivity, final Mark mark) {
        return Marker.marks(solver.work(with(resistivity)), Evidence.PAGE).stream()
                .filter(other -> other.ref().equals(mark.ref()))
                .findFirst()
                .map(other -> saying(other, resistivity));
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

    private static Mark saying(final Mark mark, final Reading.Read resistivity) {
        return new Mark(
                mark.ref(),
                mark.given(),
                mark.reading(),
                mark.sound(),
                mark.follows(),
                mark.diagnosis(),
                Said.of(
                        mark.isSound() ? "other-copper.sound" : "other-copper",
                        "mark",
                        mark.explanation(),
                        "copper",
                        resistivity.text()));
    }
}
