package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javafx.scene.Node;

/**
 * A circuit drawn with its labels: supply, fuse, cable out and back, load. Sized by the text, so
 * that it grows with it; the same is said in words to those who don't see it.
 */
public final class CircuitDrawing extends ScaledDrawing {
    /** What stands at the far end. */
    public enum Load {
        LAMP,
        MOTOR,
        HEATER,
        CONVERTER,
        BATTERY,
        SEVERAL
    }

    /**
     * What is written at the parts; empty where nothing is known.
     *
     * @param supply at the battery
     * @param cable along the conductor
     * @param length between the two ends
     * @param load at the load
     * @param beside at each of several loads how many of it there are, empty at a single one; no
     *     entries where the loads are not told apart
     */
    public record Labels(
            String supply, String cable, String length, String load, List<String> beside) {
        public Labels {
            beside = List.copyOf(beside);
        }
    }

    private static final double WIDE = 18.4;
    private static final double HIGH = 8.4;
    private static final double LEFT = 4.4;
    private static final double RIGHT = 15.4;
    private static final double TOP = 2.6;
    private static final double BOTTOM = 6.6;
    private static final double MIDDLE = (TOP + BOTTOM) / 2;

    /** Loads side by side that are not told apart are drawn as two, with more between. */
    private static final List<String> FIRST_AND_LAST = List.of("", "");

    private static final double FAR_APART = 4;
    private static final double NEAR = 2.8;

    /** What a letter or digit takes of the width of a text. */
    private static final double LETTER = 0.44;

    private static final String MORE = "…";
    private static final String ONE = "×1";

    private final Load load;
    private final Labels labels;

    public CircuitDrawing(final Load load, final Labels labels) {
        super(WIDE, HIGH);
        this.load = load;
        this.labels = labels;
        setAccessibleText(inWords());
        final List<Node> parts = new ArrayList<>(conductors());
        parts.addAll(Symbols.battery(at(LEFT), at(MIDDLE), EM));
        parts.addAll(Symbols.fuse(at(LEFT + 3.6), at(TOP), EM));
        parts.addAll(loads());
        parts.addAll(texts());
        draw(parts);
    }

    private List<Node> conductors() {
        return List.of(
                lead(LEFT, TOP, LEFT, MIDDLE - 0.9),
                lead(LEFT, MIDDLE + 0.9, LEFT, BOTTOM),
                copper(LEFT, TOP, RIGHT, TOP),
                copper(LEFT, BOTTOM, RIGHT, BOTTOM));
    }

    private List<Node> loads() {
        final List<Node> nodes = new ArrayList<>();
        if (load == Load.SEVERAL) {
            final List<String> counts = branches();
            for (int i = 0; i < counts.size(); i++) {
                branch(firstBranch() + i * apart(), counts.get(i), nodes);
            }
        } else {
            nodes.add(lead(RIGHT, TOP, RIGHT, BOTTOM));
            nodes.addAll(symbol());
        }
        return nodes;
    }

    private List<String> branches() {
        return labels.beside.isEmpty() ? FIRST_AND_LAST : labels.beside;
    }

    private double apart() {
        return branches().size() > 2 ? NEAR : FAR_APART;
    }

    /** Where the one nearest to the fuse hangs; the last one stands at the far end. */
    private double firstBranch() {
        return RIGHT - (branches().size() - 1) * apart();
    }

    private void branch(final double x, final String count, final List<Node> nodes) {
        nodes.add(lead(x, TOP, x, BOTTOM));
        nodes.addAll(Symbols.resistance(at(x), at(MIDDLE), EM));
        nodes.add(text(count, x + 0.7, MIDDLE + 0.35));
        if (labels.beside.isEmpty() && x < RIGHT) {
            nodes.add(text(MORE, x + FAR_APART / 2 - 0.5, MIDDLE + 0.2));
        }
    }

    private List<Node> symbol() {
        final double x = at(RIGHT);
        final double y = at(MIDDLE);
        return switch (load) {
            case MOTOR -> Symbols.motor(x, y, EM);
            case HEATER, BATTERY -> Symbols.resistance(x, y, EM);
            case CONVERTER -> Symbols.converter(x, y, EM);
            case LAMP, SEVERAL -> Symbols.lamp(x, y, EM);
        };
    }

    private List<Node> texts() {
        final List<Node> texts = new ArrayList<>();
        texts.add(text(labels.supply, supplyX(), MIDDLE + 0.35));
        texts.add(text(PartsTexts.of("fuse"), LEFT + 2.8, TOP - 0.9));
        texts.add(text(labels.cable, LEFT + 6, TOP - 0.9));
        if (!labels.length.isEmpty()) {
            texts.add(measure());
            texts.add(text(labels.length, LEFT + 4.5, MIDDLE + 0.7));
        }
        texts.add(text(labels.load, loadX(), BOTTOM + 1.5));
        return texts;
    }

    private Node measure() {
        final double end = (load == Load.SEVERAL ? firstBranch() : RIGHT) - 1.6;
        return line(LEFT + 2.4, MIDDLE - 0.6, end, MIDDLE - 0.6, Styles.MEASURE);
    }

    /** It ends where the plates of the battery begin. */
    private double supplyX() {
        return Math.max(0, LEFT - 1.35 - LETTER * labels.supply.length());
    }

    private double loadX() {
        return Math.max(LEFT, Math.min(RIGHT - 2, WIDE - 0.55 * labels.load.length() - 0.2));
    }

    /** "several loads side by side: ×6, 1". */
    private String loadInWords() {
        final String said = PartsTexts.of("load." + load.name().toLowerCase(Locale.ROOT));
        return load == Load.SEVERAL && labels.beside.stream().anyMatch(it -> !it.isEmpty())
                ? said
                        + labels.beside.stream()
                                .map(it -> it.isEmpty() ? ONE : it)
                                .collect(Collectors.joining(", ", " (", ")"))
                : said;
    }

    private String inWords() {
        final boolean bare = labels.cable.isEmpty() && labels.length.isEmpty();
        final String words =
                PartsTexts.of(
                        bare ? "circuit" : "circuit.cable",
                        "supply",
                        labels.supply,
                        "cable",
                        labels.cable + " " + labels.length,
                        "load",
                        loadInWords());
        final String end =
                labels.load.isEmpty() ? "" : PartsTexts.of("circuit.taking", "taken", labels.load);
        return (words + end).replaceAll(" +", " ");
    }
}
