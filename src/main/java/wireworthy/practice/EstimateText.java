package wireworthy.practice;

import wireworthy.texts.TextBundle;
import wireworthy.working.Line;

/** Says why a power of ten is the nearest, or how far off it is. */
final class EstimateText {
    private static final TextBundle TEXTS = new TextBundle("exercises");

    private EstimateText() {}

    /**
     * In words.
     *
     * @param line the last one of the working
     * @param nearest the right power of ten
     * @param off by how many powers of ten the choice lies above the right one
     */
    static String why(final Line line, final String nearest, final int off) {
        return TEXTS.of("estimate." + key(off))
                .replace("{numbers}", line.numbers())
                .replace("{formula}", line.formula())
                .replace("{nearest}", nearest);
    }

    private static String key(final int off) {
        return switch (off) {
            case -2 -> "hundred-too-small";
            case -1 -> "ten-too-small";
            case 0 -> "right";
            case 1 -> "ten-too-big";
            default -> "hundred-too-big";
        };
    }
}
