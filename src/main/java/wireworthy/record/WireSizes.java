package wireworthy.record;

/** How cable is sold where a person buys it. */
public enum WireSizes {
    MM2,
    AWG
}
