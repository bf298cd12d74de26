package wireworthy.window.evening;

import java.util.Locale;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import wireworthy.evening.called.CalledGroup;
import wireworthy.evening.called.Counted;
import wireworthy.evening.called.Origin;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** What was called out, on the wall: a plain list, or sorted by where it comes from. */
final class ProjectorCalled extends VBox {
    private final ProjectorTask task;

    ProjectorCalled(final ProjectorTask task) {
        this.task = task;
        getStyleClass().addAll(Styles.PAGE, Styles.TIGHT, Styles.CALLED_OUT);
        redraw();
    }

    void redraw() {
        getChildren().setAll(Texts.subtitle(ProjectorTexts.of("called")));
        if (task.told().get()) {
            task.groups().forEach(group -> getChildren().add(card(group)));
        } else {
            task.counted().forEach(each -> getChildren().add(Texts.strong(text(each))));
            getChildren().add(Texts.soft(ProjectorTexts.of("kept-back")));
        }
    }

    private static String text(final Counted each) {
        return each.count() == 1
                ? Texts.kept(each.text())
                : ProjectorTexts.of(
                        "times", "figure", Texts.kept(each.text()), "count", each.count());
    }

    private Node card(final CalledGroup group) {
        final Origin origin = group.origin();
        final VBox card = new VBox();
        card.getStyleClass().addAll(Styles.CARD, Styles.CALLED_GROUP);
        final FlowPane head = Buttons.row(new Badge(verdict(origin.kind()), count(group)));
        if (origin.kind() != Origin.Kind.SOUND && !origin.why().isEmpty()) {
            head.getChildren().add(why(group));
        }
        card.getChildren()
                .addAll(
                        head,
                        Texts.strong(
                                group.counted().stream()
                                        .map(ProjectorCalled::text)
                                        .collect(Collectors.joining(";  "))),
                        Texts.paragraph(Texts.kept(origin.title())));
        return card;
    }

    private Button why(final CalledGroup group) {
        final Button why = Buttons.plain(ProjectorTexts.of("why"), () -> task.open(group));
        why.setAccessibleText(ProjectorTexts.of("why.read", "title", group.origin().title()));
        return why;
    }

    private static String count(final CalledGroup group) {
        return ProjectorTexts.of(
                group.origin().kind().name().toLowerCase(Locale.ROOT), "count", group.count());
    }

    /** What no slip explains is neither: nothing more is known of it than that it differs. */
    static Verdict verdict(final Origin.Kind kind) {
        return switch (kind) {
            case SOUND -> Verdict.SOUND;
            case SLIP -> Verdict.UNSOUND;
            case UNKNOWN -> Verdict.CAUTION;
        };
    }
}
