package wireworthy.evening;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import wireworthy.practice.Banks;
import wireworthy.practice.Draw;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/**
 * The banks that sheets are made from: those that came with the program, and those with one's own.
 */
public final class Shelf {
    private static final long EXAMPLE = 1;

    private final Draw draw = new Draw(new Solver());
    private final BankSet builtIn;
    private final BankSet withOwn;

    private Shelf(final BankSet builtIn, final BankSet withOwn) {
        this.builtIn = builtIn;
        this.withOwn = withOwn;
    }

    /** Only what came with the program. */
    public static Shelf builtIn() {
        return of(Banks.read(List.of()));
    }

    /** What came with the program, and the banks of a folder where there is one. */
    public static Shelf with(final Path ownBanks) {
        final BankSet builtIn = BankSet.of(Banks.read(List.of()));
        return Files.isDirectory(ownBanks)
                ? new Shelf(builtIn, BankSet.of(Banks.read(List.of(ownBanks))))
                : new Shelf(builtIn, builtIn);
    }

    /** These banks, whether own ones are wanted or not. */
    public static Shelf of(final Banks banks) {
        final BankSet all = BankSet.of(banks);
        return new Shelf(all, all);
    }

    /** The templates a sheet may be made from, in order. */
    public List<Template> templates(final boolean own) {
        return banks(own).templates();
    }

    /** Of each skill of a pick how many templates fit its difficulties, sizes and voltages. */
    public Map<Skill, Integer> fitting(final Pick.BySkills by, final boolean own) {
        return Selection.counts(by, templates(own));
    }

    /** Whether there are own banks beside those that came with the program. */
    public boolean hasOwn() {
        return withOwn.templates().size() > builtIn.templates().size();
    }

    /** An example of a template, the same each time. */
    public Exercise example(final Template template) {
        return draw.exercise(template, EXAMPLE);
    }

    BankSet banks(final boolean own) {
        return own ? withOwn : builtIn;
    }

    Draw draw() {
        return draw;
    }
}
