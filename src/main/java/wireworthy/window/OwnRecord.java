package wireworthy.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.practice.Moment;
import wireworthy.practice.Standing;
import wireworthy.record.Answer;
import wireworthy.record.RecordFile;
import wireworthy.record.RecordProblem;

/** The record of the one who learns here, and what was read of it. */
final class OwnRecord {
    static final String PERSON = "me";
    private static final Duration LATELY = Duration.ofDays(7);
    private static final int MOST_LATELY = 400;
    private static final int SUSPICIONS = 3;

    private final Path file;
    private final Clock clock;
    private final Set<String> read = new HashSet<>();
    private volatile Standing standing = Standing.NONE;
    private volatile List<Answer> lately = List.of();
    private volatile Optional<RecordFile> record = Optional.empty();
    private Optional<String> trouble = Optional.empty();

    /**
     * @param clock tells the day
     */
    OwnRecord(final Path file, final Clock clock) {
        this.file = file;
        this.clock = clock;
    }

    /** Opens the record, once. Where it can't be opened the program goes on without. */
    synchronized void fetch() {
        if (record.isEmpty()) {
            final RecordFile opened = open();
            opened.setAside().ifPresent(aside -> trouble = Optional.of(aside.words()));
            take(opened);
            opened.screensRead(PERSON).forEach(screen -> read.add(screen.lesson()));
            record = Optional.of(opened);
        }
    }

    private void take(final RecordFile from) {
        standing = from.standing(PERSON);
        lately = from.last(PERSON, MOST_LATELY);
    }

    private RecordFile open() {
        try {
            return RecordFile.open(file);
        } catch (final RecordProblem problem) {
            trouble = Optional.of(words(problem));
            return RecordFile.inMemory();
        }
    }

    private static String words(final RecordProblem problem) {
        return problem.what() + ". " + problem.remedy() + ".";
    }

    private synchronized RecordFile opened() {
        fetch();
        return record.orElseThrow();
    }

    boolean isOpen() {
        return record.isPresent();
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
        return opened().since(PERSON, now().minus(LATELY)).stream()
                .flatMap(answer -> answer.slips().stream())
                .toList();
    }

    /** The pairs of slips that fitted the last few unsound figures of the last seven days. */
    List<List<String>> suspected() {
        final List<List<List<String>>> all =
                opened().since(PERSON, now().minus(LATELY)).stream()
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

    /** Remembers that the end of a lesson has been shown. */
    void read(final String lesson) {
        read.add(lesson);
        try {
            opened().reading(PERSON, lesson, 0, true);
        } catch (final RecordProblem e) {
            trouble = Optional.of(words(e));
        }
    }
}
