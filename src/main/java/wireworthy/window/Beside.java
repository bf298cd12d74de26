package wireworthy.window;

/** What is beside a figure that is asked. */
public enum Beside {
    NOTHING_YET,
    LINES,
    /** The mark, and the working or both workings. */
    MARKED,
    /** One more line would tell which slips it was. */
    SETTLING,
    ASKED_BACK
}
