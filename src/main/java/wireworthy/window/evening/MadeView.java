package wireworthy.window.evening;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.Sheet;
import wireworthy.evening.course.Evening;
import wireworthy.evening.wish.Made;
import wireworthy.evening.wish.Wish;
import wireworthy.practice.Template;
import wireworthy.window.NextFrame;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Markdown;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Scrolling;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** What comes of a choice: the sheet in figures, its mark, its papers, its problems. */
final class MadeView extends VBox {
    private static final String LESSON = "lesson:";

    private final MakeModel model;
    private final PapersModel papers;
    private final EveningDesk desk;
    private final VBox outcome = new VBox();
    private final Label why = Texts.strong("");
    private final Label copies = Texts.paragraph("");
    private final Button make = Buttons.plain(EveningTexts.of("papers.make"), this::make);
    private final Button others;
    private final Node buttons;
    private final VBox said = new VBox();
    private final VBox plan = new VBox();
    private final Preview preview = new Preview();

    /** The buttons stay as they are, so that the keyboard stays on them. */
    MadeView(final MakeModel model, final PapersModel papers, final EveningDesk desk) {
        this.model = model;
        this.papers = papers;
        this.desk = desk;
        // Enter in a field of the form is not to make papers, so it is no default button.
        make.getStyleClass().setAll("button", Styles.MAIN);
        outcome.getStyleClass().add(Styles.EVENING_FORM);
        getStyleClass().add(Styles.EVENING_FORM);
        others = Buttons.plain(EveningTexts.of("made.others.false"), model::others);
        buttons = Buttons.row(make, others);
        buttons.setVisible(false);
        getChildren().setAll(why(), outcome, buttons, said, plan, preview);
        model.made().subscribe(made -> made.ifPresent(this::show));
        model.held().subscribe(any -> model.made().get().ifPresent(this::show));
        model.made().subscribe(any -> papers.forget());
        model.pages().subscribe(any -> model.sheet().ifPresent(this::count));
        papers.said().subscribe(this::say);
        model.comesFrom().evening().subscribe(evening -> NextFrame.then(this, this::plan));
    }

    /** What a sheet for next week was chosen by. */
    private Node why() {
        why.managedProperty().bind(why.textProperty().isNotEmpty());
        model.comesFrom().chosenFor().subscribe(now -> comes(now));
        return why;
    }

    /** One comes from the end of what was handed in: the reason is what is to be seen here. */
    private void comes(final ChosenFor now) {
        sayWhy();
        if (now.said()) {
            NextFrame.then(why, () -> Scrolling.into(why));
        }
    }

    private void sayWhy() {
        final ChosenFor chosen = model.chosenFor();
        final String problems = model.sheet().map(chosen::problems).orElse("");
        why.setText((chosen.why() + "\n" + problems).strip());
    }

    private void show(final Made made) {
        final boolean held = model.held().get();
        outcome.getChildren()
                .setAll(made.sheet().map(it -> sheet(made, it)).orElseGet(() -> refused(made)));
        if (held) {
            outcome.getChildren().addAll(held());
        }
        buttons.setVisible(!held);
        buttons.setManaged(!held);
        make.setDisable(made.sheet().isEmpty());
        // What was picked one by one stays on the sheet.
        others.setText(EveningTexts.of("made.others." + model.shown().wanted().oneByOne()));
        sayWhy();
        preview.show(held ? List.of() : made.first());
    }

    /** Where the sheet is being answered on this machine, its key is one press further away. */
    private List<Node> held() {
        return List.of(
                new Notice(Verdict.CAUTION, EveningTexts.of("made.held")),
                Buttons.row(Buttons.plain(EveningTexts.of("made.held.do"), model::lead)));
    }

    private List<Node> refused(final Made made) {
        final Notice notice = new Notice(Verdict.CAUTION, made.trouble());
        return made.without().isEmpty()
                ? List.of(notice)
                : List.of(
                        notice,
                        Buttons.row(
                                Buttons.plain(EveningTexts.of("made.leave-out"), model::leaveOut)));
    }

    private List<Node> sheet(final Made made, final Sheet sheet) {
        final Wish wish = model.shown();
        count(sheet);
        return List.of(
                Cards.card(
                        Texts.soft(EveningTexts.of("made.mark")),
                        new MarkShown(sheet.mark()),
                        Texts.soft(EveningTexts.of("made.mark.note")),
                        Texts.paragraph(problems(made, wish) + foreign(sheet)),
                        copies));
    }

    private void count(final Sheet sheet) {
        copies.setText(copies(sheet, model.shown()));
    }

    private static String problems(final Made made, final Wish wish) {
        final int problems = made.first().size();
        final int choosable = made.choosable(wish.wanted());
        final String key = wish.wanted().oneByOne() ? "made.picked" : "made.problems";
        final String said = EveningTexts.of(key, "problems", problems, "choosable", choosable);
        return made.kinds() < problems
                ? said + " " + EveningTexts.of("made.again", "kinds", made.kinds())
                : said;
    }

    /** How many of its problems are not in the language in use; nothing where all are. */
    private static String foreign(final Sheet sheet) {
        final long count = sheet.templates().stream().filter(Template::foreign).count();
        return count == 0 ? "" : " " + EveningTexts.of("made.foreign", "count", count);
    }

    private String copies(final Sheet sheet, final Wish wish) {
        final String said =
                EveningTexts.of(
                        "made.copies",
                        "copies",
                        sheet.learners(),
                        "numbers",
                        EveningTexts.of("made.own-numbers." + wish.who().ownNumbers()));
        return model.pages().get().isPresent()
                ? said
                        + " "
                        + EveningTexts.of(
                                "made.pages",
                                "each",
                                model.pages().get().getAsInt(),
                                "all",
                                model.pages().get().getAsInt() * sheet.learners())
                : said + " " + EveningTexts.of("made.counting");
    }

    /**
     * A press while papers are being made does nothing; were it disabled, the keyboard would leave.
     */
    private void make() {
        if (papers.busy().get()) {
            return;
        }
        model.sheet()
                .ifPresent(
                        sheet ->
                                desk.files()
                                        .folder(this, EveningTexts.of("papers.folder"))
                                        .ifPresent(
                                                it ->
                                                        papers.make(
                                                                sheet,
                                                                model.shown(),
                                                                model.chosenFor(),
                                                                it)));
    }

    private void say(final PapersModel.Said now) {
        said.setManaged(!now.text().isEmpty());
        said.getChildren()
                .setAll(
                        now.trouble()
                                ? new Notice(Verdict.CAUTION, now.text())
                                : Texts.strong(now.text()));
        if (!now.text().isEmpty()) {
            NextFrame.then(said, () -> Scrolling.into(said));
        }
    }

    private void plan() {
        final List<Evening> evening = model.comesFrom().evening().get().stream().toList();
        plan.getChildren().clear();
        for (final Evening each : evening) {
            final VBox card = Cards.card(Texts.title(each.title()));
            card.getChildren().addAll(Markdown.of(each.plan(), this::follow));
            plan.getChildren().add(card);
        }
        plan.setManaged(!evening.isEmpty());
    }

    private void follow(final String target) {
        if (target.startsWith(LESSON)) {
            desk.toLesson(target.substring(LESSON.length()));
        }
    }
}
