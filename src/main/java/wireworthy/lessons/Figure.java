package wireworthy.lessons;

import java.util.Map;

/**
 * A live figure as a lesson sets it.
 *
 * @param handles one for each option of the kind, in the order of the kind
 * @param tryThis a question to answer by moving the handles
 */
public record Figure(FigureKind kind, Map<FigureOption, Handle> handles, String tryThis) {
    /** The handle of an option. */
    public Handle handle(final FigureOption option) {
        final Handle handle = handles.get(option);
        if (handle == null) {
            throw new IllegalArgumentException(kind.id() + " has no option " + option.id());
        }
        return handle;
    }
}
