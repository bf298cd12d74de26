package wireworthy.facts;

import java.util.List;

/** What is said when something is asked for by a name it does not have. */
final class UnknownName {
    private UnknownName() {}

    /**
     * Gives the name back if it is known.
     *
     * @throws IllegalArgumentException if not; the message lists the known ones
     */
    static String unless(final List<String> known, final String kind, final String name) {
        if (!known.contains(name)) {
            throw new IllegalArgumentException(
                    "There is no %s \"%s\". Known: %s"
                            .formatted(kind, name, String.join(", ", known)));
        }
        return name;
    }
}
