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

    /**
     * The name an option stands at.
     *
     * @throws IllegalArgumentException if it holds something else
     */
    public Handle.Named named(final FigureOption option) {
        if (handle(option) instanceof Handle.Named named) {
            return named;
        }
        throw new IllegalArgumentException("Not a name: " + handle(option));
    }

    /**
     * Whether an option stands at yes at first.
     *
     * @throws IllegalArgumentException if it is no yes or no
     */
    public boolean yes(final FigureOption option) {
        if (handle(option) instanceof Handle.YesOrNo answer) {
            return answer.yes();
        }
        throw new IllegalArgumentException("Not yes or no: " + handle(option));
    }
}
