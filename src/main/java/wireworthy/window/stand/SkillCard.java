package wireworthy.window.stand;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import wireworthy.lessons.LessonHeading;
import wireworthy.rules.Skill;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** What the record says of one skill, and the ways into practice and to its lesson. */
public final class SkillCard extends VBox {
    private final Stand stand;
    private final Ways ways;

    /**
     * Where one goes from a skill.
     *
     * @param practise practises it at once
     * @param lesson the lesson that explains it, where there is one
     * @param open opens that lesson
     */
    public record Ways(
            Consumer<Skill> practise,
            Function<Skill, Optional<LessonHeading>> lesson,
            Consumer<LessonHeading> open) {}

    /** A card that shows no skill yet. */
    public SkillCard(final Stand stand, final Ways ways) {
        this.stand = stand;
        this.ways = ways;
        getStyleClass().add(Styles.CARD);
    }

    /** Shows a skill. */
    public void show(final Skill skill) {
        final SkillStand it = stand.of(skill);
        getChildren().setAll(name(skill), new StateLine(it.state()));
        StandTexts.of(it, stand.today()).forEach(this::say);
        say(StandTexts.standsOn(skill, stand));
        say(StandTexts.neededFor(skill));
        getChildren().add(buttons(skill));
    }

    private static Label name(final Skill skill) {
        final Label name = Texts.subtitle(skill.words());
        name.getStyleClass().add(Styles.SKILL_NAME);
        return name;
    }

    private void say(final String sentence) {
        if (!sentence.isEmpty()) {
            getChildren().add(Texts.paragraph(sentence));
        }
    }

    private FlowPane buttons(final Skill skill) {
        final Button practise =
                Buttons.main(StandTexts.of("practise"), () -> ways.practise().accept(skill));
        practise.setAccessibleText(StandTexts.of("practise.read", "skill", skill.words()));
        final FlowPane row = Buttons.row(practise);
        ways.lesson().apply(skill).ifPresent(lesson -> row.getChildren().add(open(lesson)));
        return row;
    }

    private Button open(final LessonHeading lesson) {
        final Button open =
                Buttons.plain(StandTexts.of("lesson"), () -> ways.open().accept(lesson));
        open.setAccessibleText(StandTexts.of("lesson.read", "title", lesson.title()));
        return open;
    }
}
