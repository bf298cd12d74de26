package wireworthy.record;

import wireworthy.texts.TextBundle;

/** Why the record can't be read or written, in plain words; the program can go on without it. */
public final class RecordProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    private static final TextBundle REFUSALS = new TextBundle("record-refusals");

    private final String remedy;

    /**
     * One of the refusals; what to do stands under the same key with {@code .do}.
     *
     * @param filling pairs of a place's name and what stands there
     */
    RecordProblem(final String key, final Object... filling) {
        super(REFUSALS.of(key, filling));
        this.remedy = REFUSALS.of(key + ".do", filling);
    }

    /** The same, with what it came from. */
    RecordProblem(final Throwable cause, final String key, final Object... filling) {
        super(REFUSALS.of(key, filling), cause);
        this.remedy = REFUSALS.of(key + ".do", filling);
    }

    /** What is wrong. */
    public String what() {
        return String.valueOf(getMessage());
    }

    /** What to do. */
    public String remedy() {
        return remedy;
    }
}
