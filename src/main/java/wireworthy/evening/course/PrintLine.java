package wireworthy.evening.course;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import wireworthy.evening.Difficulty;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.SystemVoltage;
import wireworthy.evening.wish.ForWhom;
import wireworthy.evening.wish.Handout;
import wireworthy.evening.wish.Wanted;
import wireworthy.evening.wish.Wish;
import wireworthy.paper.PaperSize;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/** The line of an evening that says what to print, written as on the command line. */
final class PrintLine {
    static final String BEGINS = "sheet ";

    private static final Set<String> ALONE = Set.of("--own-numbers", "--own-banks");
    private static final List<String> WITH_VALUE =
            List.of(
                    "--skills",
                    "--templates",
                    "--problems",
                    "--difficulty",
                    "--wire",
                    "--volts",
                    "--copies",
                    "--paper",
                    "--out");

    private final Map<String, String> said = new HashMap<>();

    private PrintLine() {}

    /**
     * The sheet it prints.
     *
     * @throws EveningProblem where an option or a value is unknown
     */
    static Wish read(final String line) {
        final PrintLine print = new PrintLine();
        print.options(List.of(line.strip().substring(BEGINS.length()).strip().split("\\s+")));
        return new Wish(print.wanted(), print.who(), print.handout(), Wish.USUAL.seed());
    }

    private void options(final List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            final String option = words.get(i);
            if (ALONE.contains(option)) {
                said.put(option, "");
            } else if (WITH_VALUE.contains(option) && i + 1 < words.size()) {
                i++;
                said.put(option, words.get(i));
            } else {
                throw new EveningProblem(
                        "\"" + option + "\" is no option of an evening, or says nothing",
                        "Choose of " + String.join(", ", WITH_VALUE) + ", --own-numbers");
            }
        }
    }

    private Wanted wanted() {
        final Set<Skill> skills = some(Skill.class, "--skills", Skill::id);
        return Wanted.USUAL
                .withOwnBanks(said.containsKey("--own-banks"))
                .withOneByOne(said.containsKey("--templates"))
                .withTemplates(list("--templates"))
                .withSkills(skills)
                .withProblems(number("--problems", Wanted.USUAL.problems()))
                .withDifficulties(some(Difficulty.class, "--difficulty", Difficulty::id))
                .withSizes(sizes())
                .withVoltages(some(SystemVoltage.class, "--volts", it -> "" + it.volts()));
    }

    private Optional<WireSizes> sizes() {
        return said.getOrDefault("--wire", "any").equals("any")
                ? Optional.empty()
                : some(WireSizes.class, "--wire", PrintLine::lower).stream().findFirst();
    }

    private ForWhom who() {
        return ForWhom.USUAL
                .withCopies(number("--copies", ForWhom.USUAL.copies()))
                .withOwnNumbers(said.containsKey("--own-numbers"));
    }

    private Handout handout() {
        return said.containsKey("--paper")
                ? Handout.USUAL.withPaper(
                        some(PaperSize.class, "--paper", PrintLine::lower).iterator().next())
                : Handout.USUAL;
    }

    private static String lower(final Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private List<String> list(final String option) {
        return said.containsKey(option) ? List.of(said.get(option).split(",")) : List.of();
    }

    private int number(final String option, final int usual) {
        final String typed = said.getOrDefault(option, String.valueOf(usual));
        if (!typed.matches("[0-9]{1,3}")) {
            throw new EveningProblem(
                    "\"" + typed + "\" after " + option + " is no number", "Write it in digits");
        }
        return Integer.parseInt(typed);
    }

    private <E extends Enum<E>> Set<E> some(
            final Class<E> type, final String option, final Function<E, String> id) {
        return said.containsKey(option)
                ? list(option).stream().map(name -> one(type, name, id)).collect(Collectors.toSet())
                : EnumSet.allOf(type);
    }

    private static <E extends Enum<E>> E one(
            final Class<E> type, final String name, final Function<E, String> id) {
        final Collection<E> all = Arrays.asList(type.getEnumConstants());
        return all.stream()
                .filter(each -> id.apply(each).equals(name))
                .findFirst()
                .orElseThrow(
                        () ->
                                new EveningProblem(
                                        "Nothing is called \"" + name + "\"",
                                        "Choose of "
                                                + all.stream()
                                                        .map(id)
                                                        .collect(Collectors.joining(", "))));
    }
}
