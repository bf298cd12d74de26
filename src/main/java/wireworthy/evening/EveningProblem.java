package wireworthy.evening;

import wireworthy.texts.TextBundle;

/** Why something for the evening can't be made or read, in plain words. */
public final class EveningProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    private static final TextBundle REFUSALS = new TextBundle("sheet-refusals");

    private final String remedy;

    /**
     * @param what what is wrong, without a full stop
     * @param remedy what to do, without a full stop
     */
    public EveningProblem(final String what, final String remedy) {
        super(what, null, false, false);
        this.remedy = remedy;
    }

    /**
     * One of the refusals; what to do stands under the same key with {@code .do}.
     *
     * @param filling pairs of a place's name and what stands there
     */
    public static EveningProblem of(final String key, final Object... filling) {
        return new EveningProblem(REFUSALS.of(key, filling), REFUSALS.of(key + ".do", filling));
    }

    /** What is wrong, without a full stop. */
    public String what() {
        return String.valueOf(getMessage());
    }

    /** What to do, without a full stop. */
    public String remedy() {
        return remedy;
    }

    /** Both, as sentences. */
    public String text() {
        return what() + ". " + remedy + ".";
    }
}
