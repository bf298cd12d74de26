package wireworthy.window;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import wireworthy.lessons.Block;
import wireworthy.practice.Banks;
import wireworthy.practice.Draw;
import wireworthy.practice.SlipHunt;
import wireworthy.practice.Template;
import wireworthy.record.Answer;
import wireworthy.record.RecordFile;
import wireworthy.working.Solver;

/** A learner at the small bank that holds every kind of exercise. */
final class Kinds {
    static final String BANK = "heron-kinds";
    static final String WHOLE = "house-lamps-whole";
    static final String CHOICE = "comes-back";
    static final String ESTIMATE = "fan-roughly";
    static final String ORDER = "isolate";
    static final Content CONTENT = new Content(List.of(banks()), List::of, Optional::empty);

    private static final AtomicInteger RECORDS = new AtomicInteger();

    private Kinds() {}

    private static Path banks() {
        try {
            return Path.of(
                    Objects.requireNonNull(Banks.class.getResource("banks"), "banks").toURI());
        } catch (final URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A record nobody has written to. */
    static Path fresh(final Path folder) {
        return folder.resolve("kinds-" + RECORDS.incrementAndGet() + ".sqlite");
    }

    static Learner learner(final Path file) {
        final Learner learner = new Learner(file, new Solver(), Evenings.CLOCK, CONTENT);
        learner.reading().join();
        return learner;
    }

    /** Practice at one exercise of the bank. */
    static PracticeModel at(final Path file, final String template) {
        final Learner learner = learner(file);
        learner.want(List.of(new Block.Questions(1, BANK, List.of(template))));
        final PracticeModel model = new PracticeModel(learner);
        model.next();
        return model;
    }

    /** Practice at a working of the lamps' drop in which the cable is counted one way. */
    static PracticeModel hunting(final Path file) {
        final Template template =
                CONTENT.banks().template("heron-feeds", "aisle-strips-drop").orElseThrow();
        final SlipHunt hunt =
                new Draw(new Solver()).hunt(template, 7, List.of("one-way-length")).orElseThrow();
        final PracticeModel model = new PracticeModel(learner(file));
        model.show(new Trainer.Next(hunt, "One with a slip in it", Optional.empty()));
        return model;
    }

    static List<Answer> kept(final Path file) {
        try (RecordFile record = RecordFile.open(file)) {
            return record.answers("me");
        }
    }
}
