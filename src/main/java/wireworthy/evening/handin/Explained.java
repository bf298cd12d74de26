package wireworthy.evening.handin;

import java.util.Locale;

/** When a learner at a laptop is told what is right: the leader's choice. */
public enum Explained {
    NOW,
    AT_THE_END,
    NOT_AT_ALL;

    /** The name used in files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
