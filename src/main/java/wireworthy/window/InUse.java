package wireworthy.window;

import wireworthy.record.SumsInUse;

/** The sums in use, and the way to where they are changed. */
public interface InUse {
    /** The usual sums, which nobody can change. */
    InUse USUAL =
            new InUse() {
                @Override
                public SumsInUse sums() {
                    return SumsInUse.USUAL;
                }

                @Override
                public void change() {}
            };

    /** What questions and lessons go by that leave it open. */
    SumsInUse sums();

    /** Goes to the page where they are changed. */
    void change();
}
