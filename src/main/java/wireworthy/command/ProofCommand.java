package wireworthy.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import wireworthy.lessons.Lesson;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.LessonProblem;
import wireworthy.lessons.LessonProof;
import wireworthy.lessons.Lessons;
import wireworthy.practice.Bank;
import wireworthy.practice.BankProblem;
import wireworthy.practice.BankProof;
import wireworthy.practice.Banks;
import wireworthy.practice.Draw;
import wireworthy.working.Solver;

/** Checks banks and lessons as their readers will meet them. */
@Command(
        name = "proof",
        mixinStandardHelpOptions = true,
        description = {
            "Check banks and lessons: read them, draw every template many times, see that it can"
                    + " be",
            "worked, that slips stand apart, that texts are short and easy to read. Prints file,"
                    + " line",
            "and remedy. Exit status 0 when nothing was found, 2 when anything was."
        })
final class ProofCommand implements Callable<Integer> {
    private static final int SOMETHING_FOUND = 2;

    @Option(
            names = "--banks",
            paramLabel = "FOLDER",
            description = "Check the banks of this folder beside the built-in ones.")
    private @Nullable Path banks;

    @Option(
            names = "--lessons",
            paramLabel = "FOLDER",
            description = "Check the lessons of this folder beside the built-in ones.")
    private @Nullable Path lessons;

    @Option(
            names = "--draws",
            paramLabel = "N",
            defaultValue = "1000",
            description = "How often each template is drawn; ${DEFAULT-VALUE} unless given.")
    private int draws;

    @Option(names = "--table", description = "Print the draws of every template too.")
    private boolean table;

    @Spec private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        if (draws < 1) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--draws " + draws + " would prove nothing: take 1 or more.");
        }
        final Solver solver = new Solver();
        final Banks all = Banks.read(Optional.ofNullable(banks).stream().toList());
        final List<String> found = new ArrayList<>();
        all.problems().stream().map(BankProblem::text).forEach(found::add);
        final int templates = proveBanks(all, new BankProof(new Draw(solver), draws), found);
        final int read = proveLessons(all, solver, found);
        found.forEach(out()::println);
        out().printf(
                        Locale.ROOT,
                        "%d banks, %d templates drawn %d times each, %d lessons: %s.%n",
                        all.banks().size(),
                        templates,
                        draws,
                        read,
                        found.isEmpty() ? "nothing to mend" : found.size() + " things to mend");
        out().flush();
        return found.isEmpty() ? 0 : SOMETHING_FOUND;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private int proveBanks(final Banks all, final BankProof proof, final List<String> found) {
        int templates = 0;
        for (final Bank bank : all.banks()) {
            for (final BankProof.Seen seen : proof.of(bank)) {
                templates++;
                seen.problems().stream().map(BankProblem::text).forEach(found::add);
                if (table) {
                    out().printf(
                                    Locale.ROOT,
                                    "%-60s %-32s %2d %3d %3d%n",
                                    seen.template().fullId(),
                                    seen.template().skill().id(),
                                    seen.template().difficulty(),
                                    seen.medianDraws(),
                                    seen.worstDraws());
                }
            }
        }
        return templates;
    }

    private int proveLessons(final Banks all, final Solver solver, final List<String> found) {
        final Lessons read = Lessons.read(solver, Optional.ofNullable(lessons));
        final LessonProof proof = new LessonProof((bank, id) -> all.template(bank, id).isPresent());
        read.unread().stream().map(LessonProblem::text).forEach(found::add);
        for (final LessonHeading heading : read.contents()) {
            final Lesson lesson = read.lesson(heading.id()).orElseThrow();
            proof.of(lesson, read.file(heading.id())).stream()
                    .map(LessonProblem::text)
                    .forEach(found::add);
        }
        return read.contents().size();
    }
}
