package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wireworthy.practice.ChoiceProblem;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.PickList;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** A few things to choose from, and beside them what really happens. */
final class ChoiceView implements ExerciseView {
    private final ChoiceModel model;
    private final WayOn way;
    private final PickList options;
    private final VBox beside = new VBox();

    ChoiceView(final ChoiceModel model, final WayOn way) {
        this.model = model;
        this.way = way;
        final List<ChoiceProblem.Option> all = model.exercise().options();
        options =
                new PickList(
                        model.exercise().ask(),
                        all.stream().map(ChoiceProblem.Option::text).toList(),
                        number -> model.chosen().set(Optional.of(all.get(number))),
                        model::answer);
        beside.getStyleClass().add(Styles.TIGHT);
        model.chosen().subscribe(now -> now.map(all::indexOf).ifPresent(options::pick));
        model.marked().subscribe(this::show);
    }

    private void show(final Optional<ChoiceProblem.Option> marked) {
        beside.getChildren().setAll(said(marked));
        if (marked.isPresent()) {
            IntoView.bring(beside);
        }
    }

    private List<Node> said(final Optional<ChoiceProblem.Option> marked) {
        return marked.map(this::said)
                .orElseGet(() -> List.of(Texts.soft(PracticeTexts.of("choice.waiting"))));
    }

    private List<Node> said(final ChoiceProblem.Option chosen) {
        if (chosen.right()) {
            return List.of(notice(Verdict.SOUND, "choice.sound", chosen), way.sound());
        }
        final List<Node> parts = new ArrayList<>();
        parts.add(notice(Verdict.UNSOUND, "choice.unsound", chosen));
        parts.add(notice(Verdict.SOUND, "choice.right", model.exercise().right()));
        parts.add(way.unsound(way.lesson()));
        return parts;
    }

    private static Notice notice(
            final Verdict verdict, final String key, final ChoiceProblem.Option option) {
        final VBox words =
                new VBox(
                        Texts.strong(Texts.kept(PracticeTexts.of(key, "option", option.text()))),
                        Texts.paragraph(Texts.kept(option.why())));
        return new Notice(verdict, words);
    }

    @Override
    public Node answering() {
        return options;
    }

    @Override
    public Node beside() {
        return beside;
    }

    @Override
    public void focus() {
        options.focus();
    }
}
