package wireworthy.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * How a vehicle's circuits branch off, drawn as one line for both conductors: battery, main fuse,
 * board, a fuse and a cable for each circuit, taps below the circuit they leave.
 *
 * @param supply at the battery
 * @param mainFuse at the main fuse
 * @param mainCable along the main cable
 * @param branches in the order drawn: each tap after what it leaves
 */
public record DistributionOnPaper(
        String supply, String mainFuse, String mainCable, List<Branch> branches) {
    /**
     * One circuit.
     *
     * @param depth 0 from the board, 1 tapped off a circuit of the board, and so on
     * @param fused whether a fuse stands where it leaves
     * @param missing whether it could start a fire for want of one
     * @param name of the circuit
     * @param fuse its rating, or that none is there
     * @param cable section and length
     */
    public record Branch(
            int depth, boolean fused, boolean missing, String name, String fuse, String cable) {}

    /** The kinds of object that {@link CircuitDrawers} draws. */
    static final String FEED = "feed";

    static final String BRANCH = "branch";

    /** Millimetres from one level to the next: a tap leaves behind the fuse of its cable. */
    static final double STEP = 16;

    private static final int DEEPEST = 4;

    public DistributionOnPaper {
        branches = List.copyOf(branches);
    }

    /** Puts it into a page. */
    public void into(final Block page) {
        final Block box = page.add("div", "distribution");
        final Block feed = box.add("div", FEED);
        feed.add("object").with("type", FEED);
        feed.label(14, 2.6, supply);
        feed.label(14, 12.4, mainFuse);
        feed.label(14, 20, mainCable);
        for (int i = 0; i < branches.size(); i++) {
            branch(box.add("div", BRANCH), i);
        }
    }

    private void branch(final Block row, final int index) {
        final Branch branch = branches.get(index);
        final int depth = depth(branch);
        row.add("object")
                .with("type", BRANCH)
                .with("data-depth", String.valueOf(depth))
                .with("data-fused", String.valueOf(branch.fused()))
                .with("data-missing", String.valueOf(branch.missing()))
                .with("data-through", through(index));
        final double left = 5 + depth * STEP;
        row.label(left + STEP + 3, 0.7, branch.fuse());
        row.label(left + STEP + 22, 0.7, branch.cable());
        row.label(126, 3.2, branch.name());
    }

    private static int depth(final Branch branch) {
        return Math.min(branch.depth(), DEEPEST);
    }

    /** Of each level up to that of taps off this branch, whether a line goes on below it. */
    private String through(final int index) {
        final List<String> levels = new ArrayList<>();
        for (int level = 0; level <= depth(branches.get(index)) + 1; level++) {
            levels.add(goesOn(index, level) ? "1" : "0");
        }
        return String.join("", levels);
    }

    private boolean goesOn(final int index, final int level) {
        return branches.stream()
                        .skip(index + 1L)
                        .mapToInt(DistributionOnPaper::depth)
                        .filter(depth -> depth <= level)
                        .findFirst()
                        .orElse(-1)
                == level;
    }
}
