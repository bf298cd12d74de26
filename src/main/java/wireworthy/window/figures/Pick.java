package wireworthy.window.figures;

import java.util.List;
import javafx.beans.property.IntegerProperty;

/**
 * One of a few, picked by name.
 *
 * @param label what is picked: "held"
 * @param chosen which of the names, counted from 0
 */
record Pick(String label, List<String> names, IntegerProperty chosen) {
    Pick {
        names = List.copyOf(names);
    }
}
