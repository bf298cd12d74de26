package wireworthy.vehicle.check;

/** What of a vehicle a figure typed for one circuit mostly leaves as it was. */
final class LastParts {
    private final Last<Source> source = new Last<>();
    private final Last<MainCheck> main = new Last<>();
    private final Last<Sums> supply = new Last<>();

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
