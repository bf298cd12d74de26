package wireworthy.record;

/** What is fitted out. */
public enum Craft {
    VAN,
    TRAILER,
    BOAT
}
