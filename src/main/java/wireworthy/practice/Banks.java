package wireworthy.practice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wireworthy.working.Solver;

/**
 * All banks at hand.
 *
 * @param problems what could not be used, by file
 */
public record Banks(List<Bank> banks, List<BankProblem> problems) {
    private static final String FOLDER = "problem-banks";
    private static final String ENDING = ".json";

    private static final String SCHEMA = ".schema.json";

    public Banks {
        banks = List.copyOf(banks);
        problems = List.copyOf(problems);
    }

    /**
     * The banks that came with the program, then those of the given folders. The first were tried
     * out when the program was built; of the others each template is worked once.
     */
    public static Banks read(final List<Path> folders) {
        final List<ContentFile> own = new ArrayList<>();
        folders.forEach(folder -> own.addAll(ContentFiles.in(folder, ENDING)));
        final List<ContentFile> spoken = new ArrayList<>(ContentFiles.spoken(FOLDER, ENDING));
        folders.forEach(folder -> spoken.addAll(ContentFiles.spoken(folder, ENDING)));
        return of(ContentFiles.builtIn(FOLDER, ENDING), own, new SpokenTexts(spoken));
    }

    /** The banks of these files, each template tried. */
    static Banks of(final List<ContentFile> files) {
        return of(List.of(), files, new SpokenTexts(List.of()));
    }

    private static Banks of(
            final List<ContentFile> known, final List<ContentFile> own, final SpokenTexts spoken) {
        final Banks first = new Banks(List.of(), List.of()).with(known, spoken, it -> {});
        return own.isEmpty() ? first : first.with(own, spoken, new Draw(new Solver())::tryOut);
    }

    /** These and the banks of the files; of two with one id the first is kept. */
    private Banks with(
            final List<ContentFile> files,
            final SpokenTexts spoken,
            final Consumer<Template> trial) {
        final BankReader reader = new BankReader(trial, spoken);
        final List<Bank> all = new ArrayList<>(banks);
        final List<BankProblem> twice = new ArrayList<>();
        for (final ContentFile file : withoutSchema(files)) {
            final Optional<Bank> bank = reader.read(file);
            if (bank.filter(b -> all.stream().anyMatch(has -> has.id().equals(b.id())))
                    .isPresent()) {
                twice.add(twice(file, bank.orElseThrow().id()));
            } else {
                bank.ifPresent(all::add);
            }
        }
        return new Banks(
                all, Stream.of(problems, reader.problems(), twice).flatMap(List::stream).toList());
    }

    private static BankProblem twice(final ContentFile file, final String id) {
        return new BankProblem(
                file.name(),
                0,
                "another bank is called \"" + id + "\" already",
                "Give this one another id under \"bank\"");
    }

    private static List<ContentFile> withoutSchema(final List<ContentFile> files) {
        return files.stream().filter(file -> !file.name().endsWith(SCHEMA)).toList();
    }

    /** The bank of this id. */
    public Optional<Bank> bank(final String id) {
        return banks.stream().filter(bank -> bank.id().equals(id)).findFirst();
    }

    /** A template by the ids of its bank and its own. */
    public Optional<Template> template(final String bank, final String id) {
        return bank(bank).flatMap(each -> each.template(id));
    }

    /** The templates of all banks, in order. */
    public List<Template> templates() {
        return banks.stream().flatMap(bank -> bank.templates().stream()).toList();
    }
}
