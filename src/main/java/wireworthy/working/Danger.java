package wireworthy.working;

/** What a wrong value leads to, the worst first. */
public enum Danger {
    FIRE,
    WILL_NOT_WORK,
    /** More volts are lost than the limit allows; the load may run all the same. */
    OVER_LIMIT,
    /** Fewer volts were measured than worked: a joint may be growing warm. */
    LESS_ARRIVES,
    /** It holds, but not for long or not in every case. */
    ONLY_JUST,
    COSTS_MONEY,
    /** It can't be told yet whether it leads to anything. */
    NOT_KNOWN;

    /** The most that is allowed on boats for what is not vital (ABYC E-11 style). */
    private static final double MOST_LOST = 0.1;

    /**
     * What losing more than the limit leads to.
     *
     * @param drop V lost
     * @param supply V at the beginning
     */
    public static Danger ofLosing(final double drop, final double supply) {
        return drop > MOST_LOST * supply ? WILL_NOT_WORK : OVER_LIMIT;
    }
}
