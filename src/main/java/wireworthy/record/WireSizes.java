package wireworthy.record;

/** How cable is sold where a person buys it. */
public enum WireSizes {
    MM2,
    AWG;

    /** How it is usually sold in a region. */
    public static WireSizes usual(final Region region) {
        return region == Region.NORTH_AMERICA ? AWG : MM2;
    }
}
