package wireworthy.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.practice.Bank;
import wireworthy.practice.Banks;
import wireworthy.practice.Template;
import wireworthy.record.WireSizes;

/**
 * What there is to practise beside what came with the program, and in which order.
 *
 * @param bankFolders folders of further banks
 * @param lessons ids of the lessons in reading order; a bank of the same id belongs to it
 * @param sizes how cable is sold where the learner buys it; empty where nothing is left out for it
 */
record Content(
        List<Path> bankFolders,
        Supplier<List<String>> lessons,
        Supplier<Optional<WireSizes>> sizes) {
    /** Only what came with the program, and all of it. */
    static final Content BUILT_IN = new Content(List.of(), List::of, Optional::empty);

    Content {
        bankFolders = List.copyOf(bankFolders);
    }

    /** One's own banks, where there is a folder of them, in the order of the lessons. */
    static Content of(final Path ownBanks, final Supplier<Lessons> lessons, final InUse inUse) {
        return new Content(
                own(ownBanks).stream().toList(),
                () -> lessons.get().contents().stream().map(LessonHeading::id).toList(),
                () -> Optional.of(inUse.sums().sizes()));
    }

    /** The folder, where there is one. */
    static Optional<Path> own(final Path folder) {
        return Optional.of(folder).filter(Files::isDirectory);
    }

    /** Of some exercises those that fit the way cable is sold. */
    List<Template> fitting(final List<Template> templates) {
        return sizes.get().map(it -> new SoldAs(it).of(templates)).orElse(templates);
    }

    /** All banks: those of lessons first, in the order of the lessons. */
    Banks banks() {
        final Banks read = Banks.read(bankFolders);
        final List<String> order = lessons.get();
        final List<Bank> sorted =
                read.banks().stream()
                        .sorted((a, b) -> Integer.compare(place(order, a), place(order, b)))
                        .toList();
        return new Banks(sorted, read.problems());
    }

    private static int place(final List<String> order, final Bank bank) {
        final int place = order.indexOf(bank.id());
        return place < 0 ? order.size() : place;
    }
}
