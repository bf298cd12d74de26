package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.scene.Node;

/**
 * How a vehicle's circuits branch off, one line for both conductors: battery, main fuse, fuse
 * board, then a fuse and a cable for each circuit; a tap leaves behind the fuse of its cable. A
 * fuse that is missing is marked by a cross and by words.
 */
public final class DistributionDrawing extends ScaledDrawing {
    /**
     * One circuit.
     *
     * @param depth 0 from the board, 1 tapped off a circuit of the board, and so on
     * @param fused whether a fuse stands where it leaves
     * @param missing whether it could start a fire for want of one
     * @param name of the circuit
     * @param fuse its rating; empty where there is none
     * @param cable section and length
     */
    public record Branch(
            int depth, boolean fused, boolean missing, String name, String fuse, String cable) {
        private String inWords() {
            return PartsTexts.of(
                    depth == 0 ? "from-board" : "tapped",
                    "name",
                    name,
                    "fuse",
                    PartsTexts.of(guarded(), "fuse", fuse),
                    "cable",
                    cable);
        }

        private String guarded() {
            return fused ? "with-fuse" : missing ? "fuse-missing" : "no-fuse";
        }
    }

    private static final double WIDE = 34;
    private static final double ROW = 2.3;
    private static final double FEED = 6.4;
    private static final double BUS = 1.4;
    private static final double STEP = 5;
    private static final int DEEPEST = 2;
    private static final double NAMES = 21.5;

    private final List<Branch> branches;

    /**
     * @param supply at the battery
     * @param main at the main fuse and its cable
     * @param branches in the order drawn: each tap after what it leaves
     */
    public DistributionDrawing(
            final String supply, final String main, final List<Branch> branches) {
        super(WIDE, FEED + ROW * branches.size());
        this.branches = List.copyOf(branches);
        setAccessibleText(
                branches.stream()
                        .map(Branch::inWords)
                        .collect(Collectors.joining("; ", supply + ", " + main + "; ", ".")));
        final List<Node> parts = new ArrayList<>(feed(supply, main));
        for (int i = 0; i < branches.size(); i++) {
            branch(i, parts);
        }
        draw(parts);
    }

    private List<Node> feed(final String supply, final String main) {
        final List<Node> parts = new ArrayList<>();
        parts.add(copper(BUS, 2.1, BUS, FEED + below(0) * ROW));
        parts.addAll(Symbols.batteryFeedingDown(at(BUS), at(1.2), EM));
        parts.add(text(supply, BUS + 1.6, 1.5));
        parts.addAll(Symbols.standingFuse(at(BUS), at(4), EM));
        parts.add(text(main, BUS + 1.6, 4.3));
        return parts;
    }

    /** How many rows a line goes down to the last branch as deep as the first of these. */
    private double below(final int first) {
        return IntStream.range(first, branches.size())
                        .takeWhile(i -> depth(i) >= depth(first))
                        .filter(i -> depth(i) == depth(first))
                        .max()
                        .orElse(0)
                + 0.5;
    }

    private int depth(final int index) {
        return Math.min(branches.get(index).depth(), DEEPEST);
    }

    private void branch(final int index, final List<Node> parts) {
        final Branch branch = branches.get(index);
        final double from = BUS + depth(index) * STEP;
        final double y = FEED + (index + 0.5) * ROW;
        parts.add(copper(from, y, NAMES - 0.6, y));
        if (branch.fused()) {
            parts.addAll(Symbols.fuse(at(from + 2), at(y), EM));
        }
        if (branch.missing()) {
            parts.addAll(Symbols.missing(at(from + 2), at(y), EM));
            parts.add(unsound(text(PartsTexts.of("missing"), from + 2.7, y - 0.35)));
        }
        taps(index, from, y, parts);
        parts.add(text(branch.fuse(), from + 3.5, y - 0.35));
        parts.add(text(branch.cable(), from + (branch.missing() ? 8 : 7.6), y - 0.35));
        parts.add(text(branch.name(), NAMES, y + 0.35));
    }

    private static Node unsound(final Node words) {
        words.getStyleClass().add(Styles.UNSOUND);
        return words;
    }

    /** The line down to what is tapped off this cable, behind its fuse. */
    private void taps(final int index, final double from, final double y, final List<Node> parts) {
        final int next = index + 1;
        if (next < branches.size() && depth(next) > depth(index)) {
            final double x = from + STEP;
            parts.add(copper(x, y, x, FEED + below(next) * ROW));
        }
    }
}
