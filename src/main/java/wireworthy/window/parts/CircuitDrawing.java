package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
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
     */
    public record Labels(String supply, String cable, String length, String load) {}

    private static final double WIDE = 18.4;
    private static final double HIGH = 8.4;
    private static final double LEFT = 3.2;
    private static final double RIGHT = 15.4;
    private static final double TOP = 2.6;
    private static final double BOTTOM = 6.6;
    private static final double MIDDLE = (TOP + BOTTOM) / 2;

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
            branch(RIGHT - 4, nodes);
            branch(RIGHT - 0.1, nodes);
        } else {
            nodes.add(lead(RIGHT, TOP, RIGHT, BOTTOM));
            nodes.addAll(symbol());
        }
        return nodes;
    }

    private void branch(final double x, final List<Node> nodes) {
        nodes.add(lead(x, TOP, x, BOTTOM));
        nodes.addAll(Symbols.lamp(at(x), at(MIDDLE), EM));
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
        texts.add(text(labels.supply, 0.1, MIDDLE + 0.35));
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
        final double end = load == Load.SEVERAL ? RIGHT - 5.6 : RIGHT - 1.6;
        return line(LEFT + 2.4, MIDDLE - 0.6, end, MIDDLE - 0.6, Styles.MEASURE);
    }

    private double loadX() {
        return Math.max(LEFT, Math.min(RIGHT - 2, WIDE - 0.55 * labels.load.length() - 0.2));
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
                        PartsTexts.of("load." + load.name().toLowerCase(java.util.Locale.ROOT)));
        final String end =
                labels.load.isEmpty() ? "" : PartsTexts.of("circuit.taking", "taken", labels.load);
        return (words + end).replaceAll(" +", " ");
    }
}
