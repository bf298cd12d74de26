package wireworthy.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import wireworthy.evening.Difficulty;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Pick;
import wireworthy.evening.SystemVoltage;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/** The options that say which problems a sheet has. */
final class SheetChoice {
    @Option(
            names = "--skills",
            split = ",",
            paramLabel = "SKILL",
            description = "Skills such as drop,fuse-choice; all unless given.")
    private List<String> skills = new ArrayList<>();

    @Option(
            names = "--templates",
            split = ",",
            paramLabel = "BANK/ID",
            description = "Single problems instead, such as voltage-drop/aisle-strips-drop.")
    private List<String> templates = new ArrayList<>();

    @Option(
            names = "--problems",
            paramLabel = "N",
            defaultValue = "8",
            description = "How many; ${DEFAULT-VALUE} unless given.")
    private int problems = 8;

    @Option(
            names = "--difficulty",
            split = ",",
            paramLabel = "HOW",
            description = "Of easy,middling,hard; all unless given.")
    private List<String> difficulties = new ArrayList<>();

    @Option(
            names = "--wire",
            paramLabel = "SIZES",
            defaultValue = "any",
            description = "Cable by mm2, by awg, or any; ${DEFAULT-VALUE} unless given.")
    private String wire = "any";

    @Option(
            names = "--volts",
            split = ",",
            paramLabel = "V",
            description = "Of 12,24,48; all unless given.")
    private List<String> volts = new ArrayList<>();

    /** What the problems are picked by. */
    Pick pick() {
        if (!templates.isEmpty()) {
            return new Pick.ByTemplates(templates);
        }
        return new Pick.BySkills(
                chosen(Skill.class, skills, Skill::id, "skill"),
                problems,
                chosen(Difficulty.class, difficulties, Difficulty::id, "difficulty"),
                sizes(),
                chosen(SystemVoltage.class, volts, each -> "" + each.volts(), "voltage"));
    }

    private Optional<WireSizes> sizes() {
        if (wire.equals("any")) {
            return Optional.empty();
        }
        return Optional.of(
                one(WireSizes.class, wire, each -> each.name().toLowerCase(Locale.ROOT), "size"));
    }

    private static <E extends Enum<E>> Set<E> chosen(
            final Class<E> type,
            final List<String> typed,
            final Function<E, String> id,
            final String what) {
        return typed.isEmpty()
                ? EnumSet.allOf(type)
                : typed.stream()
                        .map(each -> one(type, each.strip(), id, what))
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(type)));
    }

    private static <E extends Enum<E>> E one(
            final Class<E> type,
            final String typed,
            final Function<E, String> id,
            final String what) {
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> id.apply(each).equals(typed))
                .findFirst()
                .orElseThrow(
                        () ->
                                new EveningProblem(
                                        "No " + what + " is called \"" + typed + "\"",
                                        "Choose of "
                                                + Arrays.stream(type.getEnumConstants())
                                                        .map(id)
                                                        .collect(Collectors.joining(", "))));
    }
}
