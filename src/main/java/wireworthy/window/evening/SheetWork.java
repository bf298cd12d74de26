package wireworthy.window.evening;

import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.Reply;
import wireworthy.evening.handin.SheetFile;
import wireworthy.evening.handin.Unread;
import wireworthy.practice.Exercise;

/** A sheet as one learner answers it; on disk from answer to answer. Problems count from 1. */
final class SheetWork {
    private final SheetFile sheet;
    private final List<Exercise> exercises;
    private final BegunSheets kept;
    private final Clock clock;
    private final ReadOnlyIntegerWrapper problem = new ReadOnlyIntegerWrapper(1);
    private final Map<Integer, String> notes = new ConcurrentHashMap<>();
    private HandIn handIn;
    private boolean revisited;
    private boolean over;

    /**
     * @param handIn what was put down before, or nothing yet
     */
    SheetWork(
            final SheetFile sheet,
            final List<Exercise> exercises,
            final HandIn handIn,
            final BegunSheets kept,
            final Clock clock) {
        this.sheet = sheet;
        this.exercises = List.copyOf(exercises);
        this.handIn = handIn;
        this.kept = kept;
        this.clock = clock;
        handIn.replies().forEach(this::read);
        problem.set(open().stream().findFirst().orElse(1));
    }

    SheetFile sheet() {
        return sheet;
    }

    /** The learner as on the printed sheet: "7 Wren". */
    String learner() {
        return (handIn.learner() + " " + handIn.name()).strip();
    }

    synchronized HandIn handIn() {
        return handIn;
    }

    /** How many problems there are. */
    int size() {
        return exercises.size();
    }

    Exercise exercise() {
        return exercises.get(problem.get() - 1);
    }

    /** Which problem is open. */
    ReadOnlyIntegerProperty problem() {
        return problem.getReadOnlyProperty();
    }

    void go(final int number) {
        revisited = answered(number);
        problem.set(number);
    }

    /**
     * Goes to the next problem without an answer, from the end to the beginning; where there is
     * none and an answer was looked at again, to the problem behind it. False: neither.
     */
    boolean onward() {
        final List<Integer> open = open();
        final Optional<Integer> next =
                open.stream()
                        .filter(it -> it > problem.get())
                        .findFirst()
                        .or(() -> open.stream().filter(it -> it != problem.get()).findFirst())
                        .or(
                                () ->
                                        Optional.of(problem.get() + 1)
                                                .filter(it -> revisited && it <= size()));
        next.ifPresent(this::go);
        return next.isPresent();
    }

    /** The problems without a whole answer. */
    List<Integer> open() {
        return IntStream.rangeClosed(1, size()).filter(it -> !answered(it)).boxed().toList();
    }

    /** What of an answer can't be read as a figure, in words; it is a note, and still open. */
    Optional<String> note(final int number) {
        return Optional.ofNullable(notes.get(number));
    }

    private void read(final Reply reply) {
        final Optional<String> unread =
                reply.problem() <= size()
                        ? Unread.of(exercises.get(reply.problem() - 1), reply.typed())
                        : Optional.empty();
        unread.ifPresentOrElse(
                why -> notes.put(reply.problem(), why), () -> notes.remove(reply.problem()));
    }

    /** Whether every answer of a problem is put down and can be read. */
    boolean answered(final int number) {
        return handIn().reply(number)
                .filter(it -> note(number).isEmpty())
                .filter(it -> it.typed().stream().noneMatch(String::isEmpty))
                .isPresent();
    }

    /** What was put down for the open problem. */
    Optional<Reply> reply() {
        return handIn().reply(problem.get());
    }

    /** Whether what is right is said: at once, or as everything was handed in. */
    boolean tells() {
        return over || sheet.explained() == Explained.NOW;
    }

    /** Whether what is typed now counts no more. */
    boolean over() {
        return over;
    }

    /** From now on what is right is said, and nothing that is typed counts. */
    void end() {
        over = true;
    }

    /**
     * Keeps the answers to a problem. On disk when it returns.
     *
     * @return why that was not possible, in words; empty where it was
     */
    Optional<String> keep(final int number, final List<String> typed) {
        return write(
                new Reply(
                        number,
                        typed,
                        handIn().reply(number).map(Reply::wantsHelp).orElse(false),
                        clock.instant()));
    }

    /** Keeps answers where there are none yet: once it was told what is right, the first counts. */
    Optional<String> keepFirst(final int number, final List<String> typed) {
        final List<String> before = handIn().reply(number).map(Reply::typed).orElse(List.of());
        final List<String> first = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            final boolean stands = i < before.size() && !before.get(i).isEmpty();
            first.add(stands ? before.get(i) : typed.get(i).strip());
        }
        return over || first.equals(before) ? Optional.empty() : keep(number, first);
    }

    /** Keeps whether a problem is to be explained. */
    Optional<String> wantHelp(final int number, final int answers, final boolean wanted) {
        final List<String> typed =
                handIn().reply(number)
                        .map(Reply::typed)
                        .orElseGet(() -> IntStream.range(0, answers).mapToObj(i -> "").toList());
        return write(new Reply(number, typed, wanted, clock.instant()));
    }

    private synchronized Optional<String> write(final Reply reply) {
        final HandIn next = handIn.with(reply);
        try {
            kept.keep(next);
            handIn = next;
            read(reply);
            return Optional.empty();
        } catch (final IOException e) {
            return Optional.of(EveningTexts.of("work.not-kept"));
        }
    }
}
