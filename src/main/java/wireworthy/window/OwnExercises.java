package wireworthy.window;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wireworthy.practice.BankProblem;
import wireworthy.practice.Banks;
import wireworthy.practice.Choice;
import wireworthy.practice.Chooser;
import wireworthy.practice.Draw;
import wireworthy.practice.Exercise;
import wireworthy.practice.SlipHunt;
import wireworthy.practice.Template;
import wireworthy.record.Answer;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/**
 * The exercises of the one who learns here: what the banks hold, drawn so that none comes twice.
 */
final class OwnExercises {
    private static final int MOST_HUNTS = 3;

    private final OwnRecord record;
    private final Content content;
    private final Draw draw;
    private final NotLately notLately;

    /** Full ids of templates in whose working no slip could be hidden. */
    private final Set<String> plain = new HashSet<>();

    private final PassedBy passed = new PassedBy();
    private Optional<Banks> banks = Optional.empty();

    OwnExercises(final OwnRecord record, final Solver solver, final Content content) {
        this.record = record;
        this.content = content;
        this.draw = new Draw(solver);
        this.notLately = new NotLately(draw);
    }

    private synchronized Banks banks() {
        if (banks.isEmpty()) {
            banks = Optional.of(content.banks());
        }
        return banks.orElseThrow();
    }

    /** The topics, in order. */
    List<Trainer.Topic> topics() {
        return banks().banks().stream()
                .map(bank -> new Trainer.Topic(bank.id(), bank.title()))
                .toList();
    }

    /** What could not be read, in words. */
    List<String> troubles() {
        return banks().problems().stream().map(BankProblem::text).toList();
    }

    /** What a topic, or all, have that fits the way cable is sold. */
    List<Template> of(final Optional<String> topic) {
        return content.fitting(
                banks().templates().stream()
                        .filter(template -> topic.map(template.bank()::equals).orElse(true))
                        .toList());
    }

    /** Those of a bank with these ids. */
    List<Template> named(final String bank, final List<String> ids) {
        return ids.stream().flatMap(id -> banks().template(bank, id).stream()).toList();
    }

    /**
     * The next one of a topic, or of all. A working of one line has no room for a hidden slip:
     * another is chosen then, so that the reason given is true of what is shown.
     */
    Optional<Trainer.Next> next(final Optional<String> topic, final long seed) {
        final List<Template> templates = of(topic);
        final Predicate<Template> wanted = passed.wanted(templates);
        for (int tries = 1; tries <= MOST_HUNTS; tries++) {
            final Optional<Choice> choice = choice(templates, seed, this::hidesSlip, wanted);
            final Optional<Trainer.Next> next = choice.map(this::drawn);
            if (choice.filter(Choice::hunt).isEmpty()
                    || next.filter(OwnExercises::isHunt).isPresent()) {
                return next;
            }
            choice.ifPresent(it -> plain.add(it.template().fullId()));
        }
        return choice(templates, seed, template -> false, wanted).map(this::drawn);
    }

    private Optional<Choice> choice(
            final List<Template> templates,
            final long seed,
            final Predicate<Template> hunts,
            final Predicate<Template> wanted) {
        return Chooser.next(templates, record.standing(), record.moment(), seed, hunts, wanted);
    }

    private boolean hidesSlip(final Template template) {
        return !plain.contains(template.fullId());
    }

    private static boolean isHunt(final Trainer.Next next) {
        return next.exercise() instanceof SlipHunt;
    }

    /** What was chosen, with numbers that were not met lately. */
    Trainer.Next drawn(final Choice choice) {
        final Exercise exercise =
                choice.hunt()
                        ? hunt(choice.template(), choice.seed())
                        : own(choice.template(), choice.seed());
        return new Trainer.Next(
                exercise, choice.hunt() ? choice.why(exercise, slips()) : choice.why());
    }

    /** Another comes instead; what has an answer was not passed by. */
    void passBy(final Exercise exercise) {
        if (!isAnswered(ExerciseName.of(exercise))) {
            passed.add(exercise);
        }
    }

    /** What was passed by may come again. */
    void answered() {
        passed.forget();
    }

    /** The exercise of a name, as it was drawn, as long as it was not answered. */
    Optional<Trainer.Next> again(final ExerciseName name) {
        return isAnswered(name)
                ? Optional.empty()
                : template(name)
                        .flatMap(template -> drawnAs(name, template))
                        .map(exercise -> new Trainer.Next(exercise, PracticeTexts.of("left-off")));
    }

    private Optional<Template> template(final ExerciseName name) {
        return banks().template(name.bank(), name.template())
                .filter(template -> template.version() == name.version());
    }

    private Optional<Exercise> drawnAs(final ExerciseName name, final Template template) {
        final Optional<Exercise> drawn =
                name.hunt().isPresent()
                        ? draw.hunt(template, name.seed(), name.hunt().stream().toList())
                                .map(Exercise.class::cast)
                        : Optional.of(draw.exercise(template, name.seed()));
        drawn.ifPresent(notLately::remember);
        return drawn;
    }

    /** Why an exercise that was left can't be gone on with, where that needs a word. */
    Optional<String> whyNot(final ExerciseName name) {
        if (isAnswered(name)) {
            return isDone(name) ? Optional.empty() : Optional.of(PracticeTexts.of("left-begun"));
        }
        return template(name).isEmpty()
                ? Optional.of(PracticeTexts.of("left-gone"))
                : Optional.empty();
    }

    /** Whether the last of its answers was right and to the last of its figures. */
    private boolean isDone(final ExerciseName name) {
        final List<Answer> all = answers(name);
        final Answer last = all.get(all.size() - 1);
        final Optional<Quantity> end =
                template(name)
                        .filter(Template::asksFigures)
                        .filter(it -> name.hunt().isEmpty())
                        .map(it -> it.task().finds())
                        .map(finds -> finds.get(finds.size() - 1));
        return last.sound().orElse(false) && (end.isEmpty() || end.equals(last.asked()));
    }

    /** The same exercise in the language in use, answered or not. */
    Optional<Trainer.Next> same(final Exercise earlier) {
        return banks().template(earlier.template().bank(), earlier.template().id())
                .filter(template -> template.version() == earlier.template().version())
                .flatMap(template -> same(template, earlier))
                .map(exercise -> new Trainer.Next(exercise, PracticeTexts.of("left-off")));
    }

    private Optional<Exercise> same(final Template template, final Exercise earlier) {
        return earlier instanceof SlipHunt hunt
                ? draw.hunt(template, hunt.seed(), hunt.slip().ids())
                        .filter(it -> it.slip().ids().equals(hunt.slip().ids()))
                        .map(Exercise.class::cast)
                : Optional.of(draw.exercise(template, earlier.seed()));
    }

    private boolean isAnswered(final ExerciseName name) {
        return !answers(name).isEmpty();
    }

    private List<Answer> answers(final ExerciseName name) {
        return record.lately().stream()
                .filter(
                        answer ->
                                answer.bank().equals(name.bank())
                                        && answer.template().equals(name.template())
                                        && answer.seed() == name.seed())
                .toList();
    }

    /** A template's own exercise, from this seed on. */
    Exercise own(final Template template, final long from) {
        return notLately.exercise(
                template, from, record.lately(), seed -> draw.exercise(template, seed));
    }

    private Exercise hunt(final Template template, final long from) {
        final List<String> slips = slips();
        return notLately.exercise(
                template,
                from,
                record.lately(),
                seed ->
                        draw.hunt(template, seed, slips, this::isHunted)
                                .map(Exercise.class::cast)
                                .orElseGet(() -> draw.exercise(template, seed)));
    }

    /** The own slips of the last days. */
    private List<String> slips() {
        return record.slips().stream().flatMap(List::stream).toList();
    }

    private boolean isHunted(final Skill skill) {
        return Chooser.hunts(skill, record.standing(), record.moment());
    }

    /** One of the same kind as an exercise, as it was chosen. */
    Trainer.Next like(final Exercise exercise, final Choice twin) {
        return drawn(
                new Choice(
                        twin.template(), twin.seed(), twin.reason(), exercise instanceof SlipHunt));
    }
}
