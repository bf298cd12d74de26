package wireworthy.vehicle.check;

/** What is kept of a vehicle from one check to the next. */
final class LastParts {
    private final Last<Source> source = new Last<>();
    private final Last<MainCheck> main = new Last<>();
    private final Last<Sums> supply = new Last<>();

    private final Earlier earlier = new Earlier();

    /** What the own figures were sound for. */
    Earlier earlier() {
        return earlier;
    }

    Last<Source> source() {
        return source;
    }

    Last<MainCheck> main() {
        return main;
    }

    Last<Sums> supply() {
        return supply;
    }
}
