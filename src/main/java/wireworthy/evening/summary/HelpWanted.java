package wireworthy.evening.summary;

import java.util.List;

/**
 * A problem with which someone wants help.
 *
 * @param names their labels, in the order of their numbers
 */
public record HelpWanted(int problem, String skill, List<String> names) {
    public HelpWanted {
        names = List.copyOf(names);
    }
}
