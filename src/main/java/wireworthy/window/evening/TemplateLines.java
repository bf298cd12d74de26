package wireworthy.window.evening;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** The single problems of a skill, each with an example of its numbers. */
final class TemplateLines {
    /** A problem to pick: bank and template, and how it reads. */
    record Line(String id, String text) {}

    private final EveningDesk desk;
    private final Background background;

    TemplateLines(final EveningDesk desk, final Background background) {
        this.desk = desk;
        this.background = background;
    }

    /** Finds those of a skill, away from the window's thread. */
    void of(final Skill skill, final boolean ownBanks, final Consumer<List<Line>> then) {
        background.run(() -> lines(skill, ownBanks), then);
    }

    /** Finds the skill of the first of those picked, away from the window's thread. */
    void skill(
            final List<String> picked,
            final boolean ownBanks,
            final Consumer<Optional<Skill>> then) {
        background.run(() -> skill(picked, ownBanks), then);
    }

    private Optional<Skill> skill(final List<String> picked, final boolean ownBanks) {
        return picked.stream()
                .limit(1)
                .flatMap(id -> byId(id, ownBanks))
                .map(Template::skill)
                .findFirst();
    }

    private Stream<Template> byId(final String id, final boolean ownBanks) {
        return desk.shelf().templates(ownBanks).stream().filter(each -> each.fullId().equals(id));
    }

    private List<Line> lines(final Skill skill, final boolean ownBanks) {
        return desk.shelf().templates(ownBanks).stream()
                .filter(each -> each.skill() == skill)
                .map(each -> new Line(each.fullId(), text(desk.shelf().example(each))))
                .toList();
    }

    private static String text(final Exercise exercise) {
        return exercise.text() + " " + exercise.ask();
    }
}
