package wireworthy.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import wireworthy.lessons.Block;
import wireworthy.marking.Evidence;
import wireworthy.practice.Chooser;
import wireworthy.practice.Exercise;
import wireworthy.practice.LineByLine;
import wireworthy.practice.Problem;
import wireworthy.practice.ProblemLine;
import wireworthy.practice.Skills;
import wireworthy.practice.Template;
import wireworthy.record.Answer;
import wireworthy.record.Settings;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/** The one who learns here: what was answered and read, and what comes next. */
final class Learner implements Trainer {
    private static final long SEED = 1;

    /** A question of a lesson, and which of how many it is. */
    private record Wanted(Template template, int number, int of) {
        String why() {
            return PracticeTexts.of("from-lesson", "number", number, "of", of);
        }
    }

    private final OwnRecord record;
    private final OwnStand stand;
    private final OwnExercises exercises;
    private final Deque<Wanted> wanted = new ArrayDeque<>();

    /** A learner with the banks that came with the program. */
    Learner(final Path file, final Solver solver, final Clock clock) {
        this(file, solver, clock, Content.BUILT_IN);
    }

    /**
     * A learner whose record is in a file.
     *
     * @param clock tells the day
     */
    Learner(final Path file, final Solver solver, final Clock clock, final Content content) {
        this(new OwnRecord(file, clock, Settings.DEFAULTS.person()), solver, content);
    }

    /** A learner with a record. */
    Learner(final OwnRecord record, final Solver solver, final Content content) {
        this.record = record;
        this.stand = new OwnStand(record);
        this.exercises = new OwnExercises(record, solver, content);
    }

    /** Where the learner stands. */
    OwnStand stand() {
        return stand;
    }

    /** What is on record. */
    OwnRecord record() {
        return record;
    }

    @Override
    public CompletableFuture<Void> reading() {
        return record.reading();
    }

    @Override
    public OptionalLong toRead() {
        return record.toRead();
    }

    @Override
    public List<Topic> topics() {
        return exercises.topics();
    }

    @Override
    public List<String> troubles() {
        return exercises.troubles();
    }

    @Override
    public List<String> notices() {
        return stand.notices();
    }

    @Override
    public String person() {
        return record.person();
    }

    @Override
    public Optional<Duration> mayEnd() {
        return stand.mayEnd();
    }

    /** Puts these exercises before all others. */
    void want(final List<Block.Questions> questions) {
        wanted.clear();
        final List<Template> found =
                questions.stream()
                        .flatMap(it -> exercises.named(it.bank(), it.templates()).stream())
                        .toList();
        for (int i = 0; i < found.size(); i++) {
            wanted.add(new Wanted(found.get(i), i + 1, found.size()));
        }
    }

    @Override
    public void leaveLesson() {
        wanted.clear();
    }

    @Override
    public Optional<Next> next(final Optional<String> topic) {
        if (!wanted.isEmpty()) {
            return Optional.of(fromLesson(wanted.remove()));
        }
        return exercises.next(topic, SEED);
    }

    @Override
    public Optional<Next> of(final Skill skill) {
        final List<Template> all = exercises.of(Optional.empty());
        return Chooser.of(skill, all, record.standing(), record.moment(), SEED)
                .map(exercises::drawn);
    }

    @Override
    public Optional<Next> again(final String name) {
        return ExerciseName.read(name).flatMap(exercises::again);
    }

    @Override
    public Optional<String> whyNot(final String name) {
        return ExerciseName.read(name).flatMap(exercises::whyNot);
    }

    @Override
    public void passBy(final Exercise exercise) {
        exercises.passBy(exercise);
    }

    @Override
    public Optional<Next> same(final Exercise earlier) {
        return exercises.same(earlier);
    }

    /** Goes on with what a lesson still wanted to ask in a window in another language. */
    void takeOver(final Learner earlier) {
        wanted.clear();
        for (final Wanted each : earlier.wanted) {
            exercises.named(each.template().bank(), List.of(each.template().id())).stream()
                    .map(template -> new Wanted(template, each.number(), each.of()))
                    .forEach(wanted::add);
        }
    }

    private Next fromLesson(final Wanted next) {
        final Template template = next.template();
        final Exercise exercise = exercises.own(template, skills().answers() + 1L);
        return new Next(exercise, next.why(), Optional.of(template.bank()));
    }

    @Override
    public Next twin(final Exercise exercise) {
        return exercises.like(exercise, Chooser.twin(exercise));
    }

    @Override
    public List<ProblemLine> lines(final Problem problem) {
        return LineByLine.of(problem, skills(), record.today());
    }

    @Override
    public Evidence evidence() {
        return Evidence.of(record.slips(), record.suspected());
    }

    @Override
    public Optional<String> keep(
            final Exercise exercise,
            final Attempt attempt,
            final Skill skill,
            final boolean aided,
            final double seconds) {
        exercises.answered();
        return record.keep(answer(exercise, attempt, skill, aided, seconds));
    }

    private Answer answer(
            final Exercise exercise,
            final Attempt attempt,
            final Skill skill,
            final boolean aided,
            final double seconds) {
        final Template template = exercise.template();
        return new Answer(
                record.now(),
                record.today(),
                record.person(),
                template.bank(),
                template.version(),
                template.id(),
                exercise.seed(),
                skill,
                template.difficulty(),
                attempt.asked(),
                attempt.typed(),
                attempt.understood(),
                attempt.sound(),
                aided,
                attempt.slips(),
                attempt.suspected(),
                seconds);
    }

    @Override
    public String state(final Skill skill) {
        return skills().state(skill, record.today()).words();
    }

    private Skills skills() {
        return record.standing().skills();
    }
}
