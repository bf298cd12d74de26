package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.evening.Asked;
import wireworthy.evening.handin.Reply;
import wireworthy.practice.Exercise;
import wireworthy.window.Bench;
import wireworthy.window.IntoView;
import wireworthy.window.QuestionHead;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.OneOf;
import wireworthy.window.parts.Scrolling;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/**
 * The problems of a sheet, one at a time: the question at the left, what there is to say beside.
 */
final class WorkView {
    /** Two workings side by side need more room than is left beside the list of parts. */
    private static final double ROOM_FOR_BOTH = 52;

    private final LaptopModel model;
    private final SheetWork work;
    private final EveningDesk desk;
    private final VBox question = new VBox();
    private final VBox beside = new VBox();
    private final Label said = Texts.strong("");
    private final Bench page;
    private Optional<AnswerPart> answer = Optional.empty();
    private Node asked = question;
    private Node buttons = question;

    WorkView(final LaptopModel model, final SheetWork work, final EveningDesk desk) {
        this.model = model;
        this.work = work;
        this.desk = desk;
        question.getStyleClass().add(Styles.TIGHT);
        beside.getStyleClass().add(Styles.TIGHT);
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        page =
                new Bench(
                        new VBox(question),
                        EveningTexts.of("work.left"),
                        new VBox(beside),
                        EveningTexts.of("work.right"),
                        ROOM_FOR_BOTH);
        show();
    }

    Bench page() {
        return page;
    }

    /** Puts the keyboard where the answer goes, in sight; what was marked, with its mark. */
    void focus() {
        answer.ifPresent(
                part -> {
                    part.focus();
                    if (work.over() && work.reply().isPresent()) {
                        IntoView.bring(asked, part.answering(), beside);
                    } else {
                        IntoView.bring(buttons, part.answering(), asked);
                    }
                });
    }

    private void go(final int number) {
        work.go(number);
        said.setText("");
        show();
        focus();
    }

    private void show() {
        final Exercise exercise = work.exercise();
        final int number = work.problem().get();
        final AnswerPart part =
                work.tells()
                        ? new ToldAnswer(work, desk, this::onward, this::kept)
                        : new PlainAnswer(work, this::keep);
        answer = Optional.of(part);
        final List<Node> parts = new ArrayList<>();
        parts.add(head());
        parts.add(problems());
        parts.add(said);
        asked =
                new QuestionHead(
                        exercise,
                        EveningTexts.of("work.problem", "number", number, "of", work.size()),
                        exercise.skill().words());
        parts.add(asked);
        parts.add(part.answering());
        buttons = Buttons.row(part.buttons().toArray(Node[]::new));
        parts.add(buttons);
        if (work.tells()) {
            parts.add(Texts.soft(EveningTexts.of(work.over() ? "work.over" : "work.first")));
        }
        if (!work.over()) {
            parts.add(help(exercise, number));
        }
        parts.add(Buttons.row(Buttons.plain(EveningTexts.of("work.end"), () -> model.end(work))));
        question.getChildren().setAll(parts);
        beside.getChildren().setAll(part.beside());
    }

    /** Says what is the matter, in sight. */
    private void say(final String trouble) {
        said.setText(trouble);
        IntoView.bring(said);
    }

    private Label head() {
        final Label head =
                Texts.soft(
                        EveningTexts.of(
                                "work.head",
                                "learner",
                                work.learner(),
                                "mark",
                                work.sheet().mark()));
        head.getStyleClass().add(Styles.SMALL);
        return head;
    }

    private Node problems() {
        return new OneOf<>(
                EveningTexts.of("work.problems"),
                IntStream.rangeClosed(1, work.size()).boxed().toList(),
                this::chip,
                work.problem().get(),
                this::go);
    }

    private String chip(final int number) {
        if (work.note(number).isPresent()) {
            return EveningTexts.of("work.note-chip", "number", number);
        }
        return work.answered(number)
                ? EveningTexts.of("work.kept-chip", "number", number)
                : String.valueOf(number);
    }

    private Node help(final Exercise exercise, final int number) {
        final CheckBox box = new CheckBox(EveningTexts.of("work.help"));
        box.setWrapText(true);
        box.setMinHeight(CheckBox.USE_PREF_SIZE);
        box.setSelected(work.reply().map(Reply::wantsHelp).orElse(false));
        final int answers = Asked.count(exercise.template());
        box.selectedProperty()
                .addListener(
                        (any, before, wanted) ->
                                model.background()
                                        .run(
                                                () -> work.wantHelp(number, answers, wanted),
                                                why -> trouble(box, why)));
        return box;
    }

    /** What was said before goes; the box stays where it was ticked. */
    private void trouble(final Node box, final Optional<String> why) {
        why.ifPresentOrElse(this::say, () -> Scrolling.keeping(box, () -> said.setText("")));
    }

    /** Keeps what is put down and goes on once it is on disk. */
    private void keep() {
        final int number = work.problem().get();
        final List<String> typed = answer.map(AnswerPart::typed).orElse(List.of());
        if (typed.stream().allMatch(String::isBlank)) {
            say(EveningTexts.of("work.nothing"));
            return;
        }
        final boolean again = work.reply().filter(it -> it.holds(typed)).isPresent();
        model.background()
                .run(() -> work.keep(number, typed), trouble -> keptOn(number, again, trouble));
    }

    /** What can't be read is asked for once more; left as it is, it is a note. */
    private void keptOn(final int number, final boolean again, final Optional<String> trouble) {
        final Optional<String> note = work.note(number);
        if (trouble.isPresent()) {
            say(trouble.get());
        } else if (note.isPresent() && !again) {
            show();
            focus();
            say(EveningTexts.of("work.note", "why", Sentence.of(note.get()), "number", number));
        } else {
            onward();
            said.setText(
                    EveningTexts.of(
                            note.isPresent() ? "work.note-kept" : "work.kept", "number", number));
        }
    }

    /** What a mark said was kept, or why not. */
    private void kept(final String trouble) {
        said.setText(trouble);
    }

    private void onward() {
        said.setText("");
        if (work.over()) {
            final int next = work.problem().get() + 1;
            if (next <= work.size()) {
                go(next);
            } else {
                model.end(work);
            }
        } else if (work.onward()) {
            show();
            focus();
        } else {
            model.end(work);
        }
    }
}
