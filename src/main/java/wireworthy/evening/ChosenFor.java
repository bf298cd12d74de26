package wireworthy.evening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wireworthy.rules.Skill;
import wireworthy.texts.TextBundle;

/**
 * What a sheet for next week is chosen for.
 *
 * @param why what went wrong most, in words; empty for a sheet that its leader chose
 */
public record ChosenFor(String why) {
    public static final ChosenFor NOTHING = new ChosenFor("");

    private static final TextBundle TEXTS = new TextBundle("evening");

    /** Whether there is something to say. */
    public boolean said() {
        return !why.isEmpty();
    }

    /**
     * Of each problem of the sheet the skill for which it is on it; empty where nothing is said.
     */
    public String problems(final Sheet sheet) {
        if (!said()) {
            return "";
        }
        final Map<Skill, List<String>> numbers = new LinkedHashMap<>();
        for (int i = 0; i < sheet.problems(); i++) {
            numbers.computeIfAbsent(sheet.templates().get(i).skill(), any -> new ArrayList<>())
                    .add(String.valueOf(i + 1));
        }
        return TEXTS.of(
                "chosen-for",
                "skills",
                numbers.entrySet().stream()
                        .map(each -> one(each.getKey(), each.getValue()))
                        .collect(Collectors.joining("; ")));
    }

    private static String one(final Skill skill, final List<String> numbers) {
        return TEXTS.of(
                "chosen-for.one", "skill", skill.words(), "numbers", String.join(", ", numbers));
    }
}
