package wireworthy.working;

/** What a wrong value leads to, the worst first. */
public enum Danger {
    FIRE,
    WILL_NOT_WORK,
    /** Fewer volts were measured than worked: a joint may be growing warm. */
    LESS_ARRIVES,
    /** It holds, but not for long or not in every case. */
    ONLY_JUST,
    COSTS_MONEY,
    /** It can't be told yet whether it leads to anything. */
    NOT_KNOWN
}
