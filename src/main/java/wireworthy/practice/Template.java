package wireworthy.practice;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/**
 * An exercise without its numbers.
 *
 * @param bank id of its bank
 * @param version of its bank
 * @param id its own within the bank
 * @param skill the one it is chosen for
 * @param difficulty -1, 0 or 1
 * @param text with placeholders: {@code {section}}, {@code {1.power}} for the first load
 * @param given by quantity id, in the order in which numbers are drawn; may be empty where nothing
 *     is worked
 * @param task what is asked
 * @param foreign whether its texts are not in the language in use
 */
public record Template(
        String bank,
        int version,
        String id,
        Skill skill,
        int difficulty,
        String text,
        Drawing drawing,
        Map<String, Given> given,
        Task task,
        boolean foreign) {
    private static final int WHOLE = 3;

    public Template {
        given = Given.ordered(given);
    }

    /** The id that tells it apart among all banks. */
    public String fullId() {
        return bank + "/" + id;
    }

    /** Of its name alone: all that a template holds takes long to go through. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }

    /** The same, chosen for another skill. */
    Template chosenFor(final Skill other) {
        return new Template(
                bank, version, id, other, difficulty, text, drawing, given, task, foreign);
    }

    /** The quantities to be worked: those asked in order, then those that a text speaks of. */
    List<Quantity> finds() {
        return Stream.concat(task.finds().stream(), Drawn.worked(text).stream())
                .distinct()
                .toList();
    }

    /** Whether figures are asked, not one of a few things or an order. */
    public boolean asksFigures() {
        return task instanceof Task.Figures;
    }

    /** Whether drawing it anew changes more than the order of what is shown. */
    public boolean hasNumbers() {
        return asksFigures() || !given.isEmpty();
    }

    /** Whether it is a whole circuit in several parts. */
    public boolean wholeJob() {
        return task instanceof Task.Figures figures && figures.parts().size() >= WHOLE;
    }

    /** What may be mentioned in the text, by the name of its placeholder, in order. */
    Stream<Map.Entry<String, Given.Single>> mentionable() {
        return given.entrySet().stream().flatMap(Template::mentionable);
    }

    private static Stream<Map.Entry<String, Given.Single>> mentionable(
            final Map.Entry<String, Given> entry) {
        if (entry.getValue() instanceof Given.Single single) {
            return Stream.of(Map.entry(entry.getKey(), single));
        }
        return entry.getValue() instanceof Given.Loads loads
                ? mentionable(loads.loads())
                : Stream.empty();
    }

    private static Stream<Map.Entry<String, Given.Single>> mentionable(
            final List<Map<String, Given.Single>> loads) {
        return Stream.iterate(0, i -> i < loads.size(), i -> i + 1)
                .flatMap(
                        i ->
                                loads.get(i).entrySet().stream()
                                        .map(
                                                e ->
                                                        Map.entry(
                                                                (i + 1) + "." + e.getKey(),
                                                                e.getValue())));
    }
}
