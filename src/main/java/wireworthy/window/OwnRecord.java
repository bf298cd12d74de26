package wireworthy.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import wireworthy.practice.Moment;
import wireworthy.practice.Standing;
import wireworthy.record.Answer;
import wireworthy.record.HeldDay;
import wireworthy.record.People;
import wireworthy.record.RecordFile;
import wireworthy.record.RecordProblem;

/** The record of the one who learns here, and what was read of it. */
final class OwnRecord {
    private static final Duration LATELY = Duration.ofDays(7);
    private static final int MOST_LATELY = 400;
    private static final int SUSPICIONS = 3;

    private final Path file;
    private final Clock clock;
    private final Set<String> read = ConcurrentHashMap.newKeySet();
    private volatile String person;
    private volatile Standing standing = Standing.NONE;
    private volatile List<Answer> lately = List.of();
    private volatile Optional<RecordFile> record = Optional.empty();
    private volatile OptionalLong toRead = OptionalLong.empty();
    private Optional<String> trouble = Optional.empty();

    /**
     * @param clock tells the day
     * @param person code name of the one who learns
     */
    OwnRecord(final Path file, final Clock clock, final String person) {
        this.file = file;
        this.clock = clock;
        this.person = person;
    }

    /** Opens the record, once. Where it can't be opened the program goes on without. */
    synchronized void fetch() {
        if (record.isEmpty()) {
            final RecordFile opened = open();
            opened.setAside().ifPresent(aside -> trouble = Optional.of(aside.words()));
            forget(opened);
            toRead = OptionalLong.of(opened.count(person));
            take(opened);
            takeRead(opened);
            record = Optional.of(opened);
        }
    }

    /** Who was deleted could be brought back until the program was closed. */
    private void forget(final RecordFile from) {
        try {
            from.people().purge();
        } catch (final RecordProblem problem) {
            trouble = Optional.of(words(problem));
        }
    }

    private void take(final RecordFile from) {
        standing = from.standing(person);
        lately = from.last(person, MOST_LATELY);
    }

    private void takeRead(final RecordFile from) {
        read.clear();
        from.screensRead(person).forEach(screen -> read.add(screen.lesson()));
    }

    /** The code name of the one who learns. */
    String person() {
        return person;
    }

    /** From now on someone learns under this code name, or what is on record of them is new. */
    synchronized void turnTo(final String code) {
        final RecordFile from = opened();
        person = code;
        take(from);
        takeRead(from);
    }

    /** All people on record. */
    People people() {
        return opened().people();
    }

    /** Which skills held day by day, oldest first. */
    List<HeldDay> held() {
        return opened().held(person);
    }

    private RecordFile open() {
        try {
            return RecordFile.open(file);
        } catch (final RecordProblem problem) {
            trouble = Optional.of(words(problem));
            return RecordFile.inMemory();
        }
    }

    static String words(final RecordProblem problem) {
        return problem.what() + ". " + problem.remedy() + ".";
    }

    private synchronized RecordFile opened() {
        fetch();
        return record.orElseThrow();
    }

    /** Opens the record on another thread, where it isn't open yet. */
    CompletableFuture<Void> reading() {
        return isOpen()
                ? CompletableFuture.completedFuture(null)
                : CompletableFuture.runAsync(this::fetch);
    }

    boolean isOpen() {
        return record.isPresent();
    }

    /** How many answers there are to read; empty until that is known. */
    OptionalLong toRead() {
        return toRead;
    }

    /** What is wrong with the record, in words. */
    Optional<String> trouble() {
        return trouble;
    }

    Instant now() {
        return Instant.now(clock);
    }

    /** The day and the second it is now. */
    Moment moment() {
        return Moment.of(now(), clock.getZone());
    }

    long today() {
        return moment().day();
    }

    /** The last few hundred answers, oldest first. */
    List<Answer> lately() {
        opened();
        return lately;
    }

    /** Where the learner stands after all answers. */
    Standing standing() {
        opened();
        return standing;
    }

    /** The slips of the last seven days by id, those of one explanation together. */
    List<List<String>> slips() {
        return opened().since(person, now().minus(LATELY)).stream()
                .flatMap(answer -> answer.slips().stream())
                .toList();
    }

    /** The pairs of slips that fitted the last few unsound figures of the last seven days. */
    List<List<String>> suspected() {
        final List<List<List<String>>> all =
                opened().since(person, now().minus(LATELY)).stream()
                        .map(Answer::suspected)
                        .filter(pairs -> !pairs.isEmpty())
                        .toList();
        return all.subList(Math.max(0, all.size() - SUSPICIONS), all.size()).stream()
                .flatMap(List::stream)
                .toList();
    }

    /** Keeps an answer; why it could not be kept, where it could not. */
    Optional<String> keep(final Answer answer) {
        final RecordFile to = opened();
        Optional<String> notKept = trouble;
        try {
            to.keep(answer);
        } catch (final RecordProblem e) {
            notKept = Optional.of(words(e));
        }
        take(to);
        return notKept;
    }

    boolean hasRead(final String lesson) {
        return read.contains(lesson);
    }

    /** Remembers that the end of a lesson has been shown; on disk once the record is open. */
    void read(final String lesson) {
        read.add(lesson);
        if (isOpen()) {
            keepRead(lesson);
        } else {
            final CompletableFuture<Void> unused = reading().thenRun(() -> keepRead(lesson));
        }
    }

    private void keepRead(final String lesson) {
        read.add(lesson);
        try {
            opened().reading(person, lesson, 0, true);
        } catch (final RecordProblem e) {
            trouble = Optional.of(words(e));
        }
    }
}
