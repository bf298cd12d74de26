package wireworthy.evening;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wireworthy.practice.Banks;
import wireworthy.practice.Draw;
import wireworthy.practice.Template;
import wireworthy.working.Solver;

/**
 * The banks that sheets are made from: those that came with the program, and those with one's own.
 */
public final class Shelf {
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

    BankSet banks(final boolean own) {
        return own ? withOwn : builtIn;
    }

    Draw draw() {
        return draw;
    }
}
