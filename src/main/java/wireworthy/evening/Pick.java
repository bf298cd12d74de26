package wireworthy.evening;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/** What the problems of a sheet are picked by. */
public sealed interface Pick {
    /** The most problems on a sheet. */
    int MOST_PROBLEMS = 32;

    /**
     * By skill: the program takes turns among the skills, and each skill's problems come by lot.
     *
     * @param skills at least one
     * @param problems how many, 1 to {@value #MOST_PROBLEMS}
     * @param difficulties at least one
     * @param sizes how cable is sold; empty for either way
     * @param voltages at least one
     */
    record BySkills(
            Set<Skill> skills,
            int problems,
            Set<Difficulty> difficulties,
            Optional<WireSizes> sizes,
            Set<SystemVoltage> voltages)
            implements Pick {
        public BySkills {
            skills = kept(skills, "pick.no-skill");
            difficulties = kept(difficulties, "pick.no-difficulty");
            voltages = kept(voltages, "pick.no-voltage");
            if (problems < 1 || problems > MOST_PROBLEMS) {
                throw EveningProblem.of("pick.count", "problems", problems, "most", MOST_PROBLEMS);
            }
        }

        private static <E extends Enum<E>> Set<E> kept(final Set<E> chosen, final String none) {
            if (chosen.isEmpty()) {
                throw EveningProblem.of(none);
            }
            return Collections.unmodifiableSet(EnumSet.copyOf(chosen));
        }

        /** So many problems of these skills, of every difficulty, size and voltage. */
        public static BySkills of(final Set<Skill> skills, final int problems) {
            return new BySkills(
                    skills,
                    problems,
                    EnumSet.allOf(Difficulty.class),
                    Optional.empty(),
                    EnumSet.allOf(SystemVoltage.class));
        }
    }

    /**
     * One problem of each of these templates, in this order.
     *
     * @param ids bank and template, such as {@code voltage-drop/aisle-strips-drop}; one may come
     *     twice, with other numbers
     */
    record ByTemplates(List<String> ids) implements Pick {
        public ByTemplates {
            ids = List.copyOf(ids);
            if (ids.isEmpty()) {
                throw EveningProblem.of("pick.no-problem");
            }
        }
    }
}
