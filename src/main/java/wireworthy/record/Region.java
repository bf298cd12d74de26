package wireworthy.record;

/** Where it is fitted out: it decides which published limits are the usual ones. */
public enum Region {
    BRITAIN,
    EUROPE,
    NORTH_AMERICA,
    AUSTRALIA,
    ELSEWHERE
}
