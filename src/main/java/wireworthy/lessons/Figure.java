package wireworthy.lessons;

import java.util.Map;
import java.util.Set;
import wireworthy.record.SumsInUse;

/**
 * A live figure as a lesson sets it.
 *
 * @param handles one for each option of the kind, in the order of the kind
 * @param tryThis a question to answer by moving the handles
 * @param open the options that the lesson leaves to the sums in use; their handles stand at what is
 *     usual
 */
public record Figure(
        FigureKind kind,
        Map<FigureOption, Handle> handles,
        String tryThis,
        Set<FigureOption> open) {
    public Figure {
        open = Set.copyOf(open);
    }

    /** A figure of which the lesson leaves nothing open. */
    public Figure(
            final FigureKind kind, final Map<FigureOption, Handle> handles, final String tryThis) {
        this(kind, handles, tryThis, Set.of());
    }

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

    /** The same figure, by the sums in use where the lesson leaves it open. */
    public Figure by(final SumsInUse sums) {
        return new FigureBy(this, sums).figure();
    }
}
