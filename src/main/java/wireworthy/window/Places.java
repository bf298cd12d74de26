package wireworthy.window;

import java.util.List;
import wireworthy.record.DataFolder;

/** The places in the order of the strip. */
final class Places {
    private Places() {}

    static List<Place> all(final DataFolder folder) {
        return List.of(new LessonsPlace());
    }
}
