package wireworthy.practice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wireworthy.working.Solver;

/**
 * All banks at hand.
 *
 * @param problems what could not be used, by file
 */
public record Banks(List<Bank> banks, List<BankProblem> problems) {
    private static final String ENDING = ".json";

    private static final String SCHEMA = ".schema.json";

    public Banks {
        banks = List.copyOf(banks);
        problems = List.copyOf(problems);
    }

    /** The banks that came with the program, then those of the given folders. */
    public static Banks read(final List<Path> folders) {
        final List<ContentFile> files =
                new ArrayList<>(ContentFiles.builtIn("problem-banks", ENDING));
        folders.forEach(folder -> files.addAll(ContentFiles.in(folder, ENDING)));
        return of(files);
    }

    /** The banks of these files; of two with one id the first is kept. */
    static Banks of(final List<ContentFile> files) {
        final BankReader reader = new BankReader(new Draw(new Solver()));
        final List<Bank> banks = new ArrayList<>();
        final List<BankProblem> twice = new ArrayList<>();
        for (final ContentFile file : withoutSchema(files)) {
            final Optional<Bank> bank = reader.read(file);
            if (bank.filter(b -> banks.stream().anyMatch(has -> has.id().equals(b.id())))
                    .isPresent()) {
                twice.add(
                        new BankProblem(
                                file.name(),
                                0,
                                "another bank is called \""
                                        + bank.orElseThrow().id()
                                        + "\" already",
                                "Give this one another id under \"bank\""));
            } else {
                bank.ifPresent(banks::add);
            }
        }
        twice.addAll(0, reader.problems());
        return new Banks(banks, twice);
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
