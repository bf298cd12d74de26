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

/**
 * What there is to practise beside what came with the program, and in which order.
 *
 * @param bankFolders folders of further banks
 * @param lessons ids of the lessons in reading order; a bank of the same id belongs to it
 */
record Content(List<Path> bankFolders, Supplier<List<String>> lessons) {
    /** Only what came with the program. */
    static final Content BUILT_IN = new Content(List.of(), List::of);

    Content {
        bankFolders = List.copyOf(bankFolders);
    }

    /** One's own banks, where there is a folder of them, in the order of the lessons. */
    static Content of(final Path ownBanks, final Supplier<Lessons> lessons) {
        return new Content(
                own(ownBanks).stream().toList(),
                () -> lessons.get().contents().stream().map(LessonHeading::id).toList());
    }

    /** The folder, where there is one. */
    static Optional<Path> own(final Path folder) {
        return Optional.of(folder).filter(Files::isDirectory);
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
