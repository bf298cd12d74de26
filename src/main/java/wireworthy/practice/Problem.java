package wireworthy.practice;

import java.util.List;
import java.util.Optional;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Question;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/**
 * A figure to be worked, or several of one circuit.
 *
 * @param seed with bank, version and template it gives the same problem everywhere
 * @param text the situation, its figures filled in
 * @param parts what has to be answered, in order
 * @param draws how often numbers were drawn until all slips stood apart
 * @param closeness what comes too near to what even so
 */
public record Problem(
        Template template,
        long seed,
        Question question,
        Worked worked,
        String text,
        List<Part> parts,
        int draws,
        Closeness closeness)
        implements Exercise {
    public Problem {
        parts = List.copyOf(parts);
    }

    /**
     * One figure that has to be answered.
     *
     * @param ask the question, its figures filled in
     */
    public record Part(String ask, Ref ref) {}

    /** What has to be answered last. */
    public Ref asked() {
        return last().ref();
    }

    /** One part on its own, chosen for the skill of the line that gives it. */
    public Problem only(final Part part) {
        final Skill skill =
                Telling.way(worked, part.ref()).stream()
                        .filter(step -> step.direction().output().equals(part.ref()))
                        .map(step -> step.direction().skill())
                        .findFirst()
                        .orElse(template.skill());
        return new Problem(
                template.chosenFor(skill),
                seed,
                question,
                worked,
                text,
                List.of(part),
                draws,
                closeness);
    }

    @Override
    public String ask() {
        return last().ask();
    }

    private Part last() {
        return parts.get(parts.size() - 1);
    }

    @Override
    public Optional<Worked> circuit() {
        return Optional.of(worked);
    }

    /** Whether every slip stands apart from the right answer and from every other. */
    public boolean apart() {
        return closeness.none();
    }
}
