package wireworthy.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.practice.Answered;
import wireworthy.practice.Banks;
import wireworthy.practice.Choice;
import wireworthy.practice.Chooser;
import wireworthy.practice.Draw;
import wireworthy.practice.Problem;
import wireworthy.practice.SkillState;
import wireworthy.practice.Skills;
import wireworthy.practice.Template;
import wireworthy.record.Answer;
import wireworthy.record.AnsweredFrom;
import wireworthy.record.RecordFile;
import wireworthy.record.RecordProblem;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/** The one who learns here: what was answered and read, and what comes next. */
final class Learner implements Trainer {
    private static final String PERSON = "me";
    private static final long SEED = 1;

    private final Path file;
    private final Clock clock;
    private final Draw draw;
    private final Deque<Template> wanted = new ArrayDeque<>();
    private final List<Answered> history = new ArrayList<>();
    private final Set<String> read = new HashSet<>();
    private Optional<Banks> banks = Optional.empty();
    private Optional<RecordFile> record = Optional.empty();
    private Optional<String> trouble = Optional.empty();

    /**
     * A learner whose record is in a file.
     *
     * @param clock tells the day
     */
    Learner(final Path file, final Solver solver, final Clock clock) {
        this.file = file;
        this.clock = clock;
        this.draw = new Draw(solver);
    }

    /** Opens the record, once. Where it can't be opened the program goes on without. */
    synchronized void fetch() {
        if (record.isEmpty()) {
            final RecordFile opened = open();
            opened.setAside().ifPresent(aside -> trouble = Optional.of(setAside(aside)));
            history.addAll(AnsweredFrom.of(opened.answers(PERSON), clock.getZone()));
            opened.screensRead(PERSON).forEach(screen -> read.add(screen.lesson()));
            record = Optional.of(opened);
        }
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

    private static String setAside(final Path aside) {
        return "The record of your answers was damaged. It is kept as "
                + aside.getFileName()
                + ", and a new one was begun.";
    }

    private synchronized Banks banks() {
        if (banks.isEmpty()) {
            banks = Optional.of(Banks.read(List.of()));
        }
        return banks.orElseThrow();
    }

    private synchronized RecordFile record() {
        fetch();
        return record.orElseThrow();
    }

    private long today() {
        return LocalDate.now(clock).toEpochDay();
    }

    @Override
    public List<Topic> topics() {
        return banks().banks().stream().map(bank -> new Topic(bank.id(), bank.title())).toList();
    }

    @Override
    public List<String> troubles() {
        final List<String> all = new ArrayList<>();
        trouble.ifPresent(all::add);
        banks().problems().forEach(problem -> all.add(problem.text()));
        return all;
    }

    /** Puts these problems before all others. */
    void want(final String bank, final List<String> templates) {
        wanted.clear();
        templates.forEach(id -> banks().template(bank, id).ifPresent(wanted::add));
    }

    @Override
    public Optional<Next> next(final Optional<String> topic) {
        record();
        if (!wanted.isEmpty()) {
            final Template template = wanted.remove();
            return Optional.of(
                    new Next(draw.problem(template, history.size() + 1L), "From the lesson"));
        }
        final List<Template> templates =
                banks().templates().stream()
                        .filter(template -> topic.map(template.bank()::equals).orElse(true))
                        .toList();
        return Chooser.next(templates, List.copyOf(history), today(), SEED).map(this::drawn);
    }

    @Override
    public Next twin(final Problem problem) {
        return drawn(Chooser.twin(problem));
    }

    private Next drawn(final Choice choice) {
        return new Next(draw.problem(choice.template(), choice.seed()), choice.why());
    }

    @Override
    public Optional<String> keep(
            final Problem problem, final Mark mark, final boolean aided, final double seconds) {
        final Answer answer = answer(problem, mark, aided, seconds);
        history.clear();
        Optional<String> notKept = trouble;
        try {
            record().keep(answer);
        } catch (final RecordProblem e) {
            notKept = Optional.of(words(e));
        }
        history.addAll(AnsweredFrom.of(record().answers(PERSON), clock.getZone()));
        return notKept;
    }

    private Answer answer(
            final Problem problem, final Mark mark, final boolean aided, final double seconds) {
        final Template template = problem.template();
        return new Answer(
                Instant.now(clock),
                PERSON,
                template.bank(),
                template.version(),
                template.id(),
                problem.seed(),
                template.skill(),
                template.difficulty(),
                mark.ref().quantity(),
                mark.given(),
                mark.understood(),
                mark.sound(),
                aided,
                Marker.ids(mark),
                seconds);
    }

    @Override
    public String state(final Skill skill) {
        return skills().state(skill, today()).words();
    }

    private Skills skills() {
        return Skills.of(List.copyOf(history));
    }

    /** How the loosest of several skills holds; empty until the record has been read. */
    Optional<String> state(final List<Skill> several) {
        if (record.isEmpty() || several.isEmpty()) {
            return Optional.empty();
        }
        final Skills skills = skills();
        return several.stream()
                .map(skill -> skills.state(skill, today()))
                .min(Comparator.comparing(Learner::firmness))
                .map(SkillState::words);
    }

    private static int firmness(final SkillState state) {
        return switch (state) {
            case UNTRIED -> 0;
            case LOOSE -> 1;
            case WORKED_LOOSE -> 2;
            case SNUG -> 3;
            case TIGHT -> 4;
        };
    }

    boolean hasRead(final String lesson) {
        return read.contains(lesson);
    }

    /** Remembers that the end of a lesson has been shown. */
    void read(final String lesson) {
        read.add(lesson);
        try {
            record().reading(PERSON, lesson, 0, true);
        } catch (final RecordProblem e) {
            trouble = Optional.of(words(e));
        }
    }
}
