package wireworthy.window;

import java.util.Locale;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** The record while it is being read. */
final class RecordReading {
    private static final long SOON_MS = 50;
    private static final char HARD_SPACE = '\u00a0';

    private RecordReading() {}

    /** A short record is waited for; what fails is said later. */
    static boolean isSoon(final CompletableFuture<Void> reading) {
        try {
            reading.get(SOON_MS, TimeUnit.MILLISECONDS);
            return true;
        } catch (final TimeoutException e) {
            return false;
        } catch (final ExecutionException e) {
            return true;
        } catch (final InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    /** What is being waited for: how many answers, as soon as that is known. */
    static String words(final Trainer trainer) {
        final OptionalLong answers = trainer.toRead();
        return answers.isPresent()
                ? PracticeTexts.of("reading.count", "count", parted(answers.getAsLong()))
                : PracticeTexts.of("reading");
    }

    private static String parted(final long count) {
        return String.format(Locale.ROOT, "%,d", count).replace(',', HARD_SPACE);
    }
}
