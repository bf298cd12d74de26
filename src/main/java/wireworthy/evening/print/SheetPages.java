package wireworthy.evening.print;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.CodeNames;
import wireworthy.evening.Sheet;
import wireworthy.paper.Block;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.practice.Exercise;
import wireworthy.texts.TextBundle;

/**
 * A sheet on paper: a copy for each learner, the key, and the slip finder. The same sheet and names
 * always give the same bytes.
 */
public final class SheetPages {
    static final TextBundle TEXTS = new TextBundle("evening");

    private final Sheet sheet;
    private final CodeNames names;
    private final PaperSize size;
    private final ChosenFor chosenFor;
    private final List<List<Exercise>> exercises;

    /**
     * Draws all numbers.
     *
     * @param names one for each copy
     */
    public SheetPages(final Sheet sheet, final CodeNames names, final PaperSize size) {
        this(sheet, names, size, ChosenFor.NOTHING);
    }

    /**
     * Draws all numbers.
     *
     * @param names one for each copy
     * @param chosenFor stands at the head of each paper; it is in no mark
     */
    public SheetPages(
            final Sheet sheet,
            final CodeNames names,
            final PaperSize size,
            final ChosenFor chosenFor) {
        this.chosenFor = chosenFor;
        this.sheet = sheet;
        this.names = names;
        this.size = size;
        this.exercises =
                IntStream.rangeClosed(1, names.size())
                        .parallel()
                        .mapToObj(sheet::exercises)
                        .toList();
    }

    /** All three papers, made side by side. */
    public Papers all() {
        final CompletableFuture<byte[]> sheets = CompletableFuture.supplyAsync(this::sheets);
        return new Papers(key(), slipFinder(), sheets.join());
    }

    /**
     * The papers of an evening, each a PDF.
     *
     * @param key the right answers with their workings
     * @param sheets a copy for each learner
     */
    public record Papers(byte[] key, byte[] slipFinder, byte[] sheets) {}

    /** A copy for each learner, with room for the working. */
    public byte[] sheets() {
        final Pages pages = pages("sheet");
        for (int learner = 1; learner <= names.size(); learner++) {
            new LearnerCopy(
                            size,
                            sheet.mark(),
                            names.label(learner),
                            chosenFor.problems(sheet),
                            exercises.get(learner - 1))
                    .into(pages.body(), learner == names.size());
        }
        return pages.pdf();
    }

    /** The right answers with their full workings, problem by problem. */
    public byte[] key() {
        return problems("key", (block, number) -> new KeyPart(number, problem(number)).into(block));
    }

    /** The figures that known slips give, problem by problem. */
    public byte[] slipFinder() {
        return problems(
                "finder", (block, number) -> new SlipPart(number, problem(number)).into(block));
    }

    private byte[] problems(final String kind, final BiConsumer<Block, Integer> written) {
        final Pages pages = pages(kind);
        final Block body = pages.body();
        body.say("h1", TEXTS.of(kind + ".title"));
        body.say("p", TEXTS.of("mark", "mark", sheet.mark()));
        body.say("p", "small", TEXTS.of(kind + ".note"));
        if (chosenFor.said()) {
            body.say("p", chosenFor.why() + " " + chosenFor.problems(sheet));
        }
        for (int number = 1; number <= sheet.problems(); number++) {
            final String skill = problem(number).skill();
            body.say("h2", TEXTS.of("problem", "number", number, "skill", skill));
            written.accept(body, number);
        }
        return pages.pdf();
    }

    private ProblemOfAll problem(final int number) {
        return new ProblemOfAll(
                sheet.plan().ownNumbers(),
                names,
                exercises.stream().map(each -> each.get(number - 1)).toList());
    }

    private Pages pages(final String kind) {
        final String title = TEXTS.of(kind + ".title") + " " + sheet.mark();
        return new Pages(title, size, TEXTS.of("foot", "mark", sheet.mark()), "evening");
    }
}
