package wireworthy.lessons;

import java.util.List;
import wireworthy.rules.Skill;

/**
 * What the front matter of a lesson says: enough for the contents.
 *
 * @param buildsOn ids of the lessons to read before this one
 * @param reviewed whether a qualified person has reviewed it
 * @param file name of its file
 */
public record LessonHeading(
        String id,
        String title,
        List<Skill> skills,
        List<String> buildsOn,
        boolean reviewed,
        String file) {
    public LessonHeading {
        skills = List.copyOf(skills);
        buildsOn = List.copyOf(buildsOn);
    }

    LessonHeading titled(final String other) {
        return new LessonHeading(id, other, skills, buildsOn, reviewed, file);
    }
}
