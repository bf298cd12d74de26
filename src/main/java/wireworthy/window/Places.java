package wireworthy.window;

import java.util.List;
import java.util.Optional;
import wireworthy.lessons.Lessons;
import wireworthy.record.DataFolder;
import wireworthy.working.Solver;

/** The places in the order of the strip. */
final class Places {
    private Places() {}

    static List<Place> all(final DataFolder folder) {
        final Solver solver = new Solver();
        final TablesPlace tables = new TablesPlace();
        final LessonDesk desk = new ThisSitting(questions -> {}, tables::open);
        return List.of(
                new LessonsPlace(() -> Lessons.read(solver, Optional.empty()), solver, desk),
                tables);
    }
}
