package wireworthy.practice;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import wireworthy.rules.Skill;

/** Which skills stand on which, from {@code prerequisites.csv}. */
public final class Prerequisites {
    private static final Map<Skill, Set<Skill>> NEEDS = read();

    private Prerequisites() {}

    /** What a skill stands on directly. */
    public static Set<Skill> of(final Skill skill) {
        return NEEDS.getOrDefault(skill, Set.of());
    }

    private static Map<Skill, Set<Skill>> read() {
        final Map<Skill, Set<Skill>> needs = new EnumMap<>(Skill.class);
        for (final String line : lines()) {
            final int comma = line.indexOf(',');
            needs.computeIfAbsent(
                            skill(line.substring(0, comma)), key -> EnumSet.noneOf(Skill.class))
                    .add(skill(line.substring(comma + 1)));
        }
        return needs;
    }

    private static Skill skill(final String id) {
        return Skill.valueOf(id.replace('-', '_').toUpperCase(Locale.ROOT));
    }

    private static List<String> lines() {
        final InputStream stream =
                Objects.requireNonNull(
                        Prerequisites.class.getResourceAsStream("prerequisites.csv"));
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines().skip(1).toList();
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
