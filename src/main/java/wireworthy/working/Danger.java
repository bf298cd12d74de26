package wireworthy.working;

/** What a wrong value leads to, the worst first. */
public enum Danger {
    FIRE,
    WILL_NOT_WORK,
    COSTS_MONEY
}
