package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.evening.Sheet;
import wireworthy.evening.course.Evening;
import wireworthy.evening.wish.Made;
import wireworthy.evening.wish.Wish;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Markdown;
import wireworthy.window.parts.Notice;
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
    private final VBox plan = new VBox();
    private final Preview preview = new Preview();

    MadeView(final MakeModel model, final PapersModel papers, final EveningDesk desk) {
        this.model = model;
        this.papers = papers;
        this.desk = desk;
        outcome.getStyleClass().add(Styles.EVENING_FORM);
        getStyleClass().add(Styles.EVENING_FORM);
        getChildren().setAll(outcome, plan, preview);
        model.made().subscribe(made -> made.ifPresent(this::show));
        model.pages().subscribe(any -> model.made().get().ifPresent(this::show));
        papers.busy().subscribe(any -> model.made().get().ifPresent(this::show));
        model.evening().subscribe(evening -> plan(evening.stream().toList()));
    }

    private void show(final Made made) {
        final List<Node> parts = new ArrayList<>();
        if (made.sheet().isPresent()) {
            parts.addAll(sheet(made, made.sheet().get()));
        } else {
            parts.add(new Notice(Verdict.CAUTION, made.trouble()));
            if (!made.without().isEmpty()) {
                parts.add(
                        Buttons.row(
                                Buttons.plain(EveningTexts.of("made.leave-out"), model::leaveOut)));
            }
        }
        outcome.getChildren().setAll(parts);
        preview.show(made.first());
    }

    private List<Node> sheet(final Made made, final Sheet sheet) {
        final Wish wish = model.shown();
        final Label mark = Texts.title(sheet.mark());
        mark.getStyleClass().add(Styles.SHEET_MARK);
        return List.of(
                Cards.card(
                        Texts.soft(EveningTexts.of("made.mark")),
                        mark,
                        Texts.soft(EveningTexts.of("made.mark.note")),
                        Texts.paragraph(problems(made, wish)),
                        Texts.paragraph(copies(sheet, wish))),
                Buttons.row(make(sheet, wish), others()),
                said());
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
                : said;
    }

    /** Enter in a field of the form is not to make papers. */
    private Button make(final Sheet sheet, final Wish wish) {
        final Button make =
                Buttons.plain(EveningTexts.of("papers.make"), () -> papersOf(sheet, wish));
        make.getStyleClass().setAll("button", Styles.MAIN);
        make.setDisable(papers.busy().get());
        return make;
    }

    private void papersOf(final Sheet sheet, final Wish wish) {
        desk.files()
                .folder(this, EveningTexts.of("papers.folder"))
                .ifPresent(folder -> papers.make(sheet, wish, folder));
    }

    private Button others() {
        return Buttons.plain(EveningTexts.of("made.others"), model::others);
    }

    private Node said() {
        final VBox box = new VBox();
        papers.said().subscribe(said -> box.getChildren().setAll(words(said)));
        return box;
    }

    private static List<Node> words(final PapersModel.Said said) {
        if (said.text().isEmpty()) {
            return List.of();
        }
        return said.trouble()
                ? List.of(new Notice(Verdict.CAUTION, said.text()))
                : List.of(Texts.strong(said.text()));
    }

    private void plan(final List<Evening> evening) {
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
