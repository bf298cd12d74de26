package wireworthy.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ThreadLocalRandom;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.SheetFile;
import wireworthy.evening.print.SheetPages;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.record.WholeFile;

/** Makes the papers of an evening: sheets, key and slip finder. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = {
            "Make a sheet of problems for a class: a PDF of copies, one of the key with full",
            "workings, and one of the figures that known slips give. The sheet mark printed on it",
            "brings back the same sheet on any machine with the same version. Exit status 0 when",
            "the files were written, 2 when something has to be put right first."
        })
final class SheetCommand implements Callable<Integer> {
    private static final long MOST_BYTES = 100_000;
    private static final int USUAL_COPIES = 12;
    private static final int PUT_RIGHT = 2;

    @Option(
            names = "--mark",
            paramLabel = "MARK",
            description = "Print the sheet of this mark again; nothing else need be said.")
    private @Nullable String mark;

    @ArgGroup(validate = false)
    private SheetChoice choice = new SheetChoice();

    @Option(
            names = "--copies",
            paramLabel = "N",
            description = "How many copies; 12, or as many as there are code names.")
    private @Nullable Integer copies;

    @Option(
            names = "--names",
            paramLabel = "FILE",
            description = "Code names, one a line or as CSV; printed on the copies, never a mark.")
    private @Nullable Path names;

    @Option(
            names = "--own-numbers",
            description = "Other numbers for each learner; else all have the same.")
    private boolean ownNumbers;

    @Option(
            names = "--own-banks",
            description = "Also take problems from the banks in the data folder.")
    private boolean ownBanks;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Which of 65536 sheets of the same choice; by lot unless given.")
    private @Nullable Integer seed;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "a4",
            description = "a4 or letter; ${DEFAULT-VALUE} unless given.")
    private PaperSize paper = PaperSize.A4;

    @Option(
            names = "--laptops",
            paramLabel = "WHEN",
            arity = "0..1",
            fallbackValue = "at-the-end",
            description = {
                "Also write the sheet file that laptops open. What is right is said there",
                "now, at-the-end or not-at-all; ${FALLBACK-VALUE} unless given."
            })
    private @Nullable String laptops;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            required = true,
            description = "Where the files go; the folder is made.")
    private Path out = Path.of("");

    @ParentCommand private @Nullable WireworthyCommand parent;

    @Spec private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        Pages.expect();
        try {
            final Shelf shelf = shelf();
            final CodeNames named = names == null ? CodeNames.numbers(0) : read(names);
            final Sheet sheet =
                    mark == null ? Sheet.of(plan(named), shelf) : Sheet.marked(mark, shelf);
            final CodeNames learners =
                    named.size() == 0 ? CodeNames.numbers(sheet.learners()) : named;
            final Optional<SheetFile> file = file(sheet, learners);
            write(sheet, new SheetPages(sheet, learners, paper));
            file.ifPresent(this::write);
            return 0;
        } catch (final EveningProblem e) {
            spec.commandLine().getErr().println(e.text());
            return PUT_RIGHT;
        }
    }

    private Shelf shelf() {
        return parent == null ? Shelf.builtIn() : Shelf.with(parent.dataFolder().problemBanks());
    }

    private SheetPlan plan(final CodeNames named) {
        final int usual = named.size() == 0 ? USUAL_COPIES : named.size();
        return new SheetPlan(
                choice.pick(),
                ownNumbers,
                copies == null ? usual : copies,
                ownBanks,
                seed == null ? ThreadLocalRandom.current().nextInt(SheetPlan.SEEDS) : seed);
    }

    private static CodeNames read(final Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new EveningProblem(
                        file + " is too large for a list of code names", "Keep only the names");
            }
            return CodeNames.read(Files.readString(file));
        } catch (final MalformedInputException e) {
            throw new EveningProblem(file + " is not UTF-8 text", "Save it as UTF-8 text");
        } catch (final IOException e) {
            throw new EveningProblem(file + " can't be read", "Check that it is there");
        }
    }

    private void write(final Sheet sheet, final SheetPages pages) {
        final PrintWriter said = spec.commandLine().getOut();
        said.println("Sheet mark " + sheet.mark());
        final SheetPages.Papers papers = pages.all();
        said.println(written(sheet, "sheets", papers.sheets()));
        said.println(written(sheet, "key", papers.key()));
        said.println(written(sheet, "slip-finder", papers.slipFinder()));
        said.flush();
    }

    private Optional<SheetFile> file(final Sheet sheet, final CodeNames learners) {
        return Optional.ofNullable(laptops)
                .map(SheetCommand::explained)
                .map(explained -> new SheetFile(sheet.mark(), explained, learners));
    }

    private static Explained explained(final String id) {
        return Arrays.stream(Explained.values())
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                new EveningProblem(
                                        "No \"" + id + "\" is known to --laptops",
                                        "Choose of now, at-the-end, not-at-all"));
    }

    private void write(final SheetFile sheet) {
        final Path file = out.resolve("sheet-" + sheet.mark() + ".json");
        try {
            sheet.write(file);
        } catch (final IOException e) {
            throw unwritten(file);
        }
        spec.commandLine().getOut().println(file);
        spec.commandLine().getOut().flush();
    }

    private static EveningProblem unwritten(final Path file) {
        return new EveningProblem(file + " can't be written", "Choose another folder with --out");
    }

    private Path written(final Sheet sheet, final String kind, final byte[] pdf) {
        final Path file = out.resolve("sheet-" + sheet.mark() + "-" + kind + ".pdf");
        try {
            WholeFile.write(file, pdf);
        } catch (final IOException e) {
            throw unwritten(file);
        }
        return file;
    }
}
