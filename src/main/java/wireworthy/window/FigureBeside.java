package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.marking.Comparison;
import wireworthy.marking.Mark;
import wireworthy.practice.LineTexts;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Conductor;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Danger;

/** What there is to say of a figure: the mark, the workings, the rule, the lines to fill in. */
final class FigureBeside extends VBox {
    /** The buttons under what is said of a figure. */
    interface Ways {
        /**
         * The ways on.
         *
         * @param others what else may be done with a figure that is not sound
         */
        Node from(Mark mark, Button... others);
    }

    private final FigureModel model;
    private final WayOn way;
    private final Ways ways;
    private final VBox said = new VBox();
    private final VBox ruleShown = new VBox();

    FigureBeside(final FigureModel model, final WayOn way, final Ways ways) {
        this.model = model;
        this.way = way;
        this.ways = ways;
        getStyleClass().add(Styles.TIGHT);
        ruleShown.getStyleClass().add(Styles.TIGHT);
        said.getStyleClass().add(Styles.TIGHT);
        getChildren().setAll(said, ruleShown);
        model.beside().subscribe(any -> redraw());
        model.mark().subscribe(any -> redrawUnlessFillingIn());
        model.rule().subscribe(this::showRule);
    }

    /** A row of buttons whose first is what most people do next. */
    static Node row(final Button first, final Button... others) {
        return Buttons.row(WayOn.with(first, others));
    }

    /** While a line is filled in, its field keeps the keyboard: the lines show their own marks. */
    private void redrawUnlessFillingIn() {
        if (model.beside().get() != Beside.LINES) {
            redraw();
        }
    }

    /** The rule stands under what was said before; that stays. */
    private void showRule(final boolean shown) {
        if (shown) {
            ruleShown.getChildren().setAll(rule());
            IntoView.bring(ruleShown);
        }
    }

    /** Shows it anew. */
    void redraw() {
        said.getChildren()
                .setAll(
                        switch (model.beside().get()) {
                            case NOTHING_YET -> waiting();
                            case LINES -> List.of();
                            case MARKED -> marked();
                            case SETTLING -> settling();
                            case ASKED_BACK -> askedBack();
                        });
        switch (model.beside().get()) {
            case LINES -> fillIn();
            case MARKED, SETTLING, ASKED_BACK -> IntoView.bring(said);
            case NOTHING_YET -> {}
        }
    }

    private void fillIn() {
        final LinesView view = new LinesView(model, this::afterLines);
        said.getChildren().setAll(view);
        view.focus(model.settlingLine().orElseGet(model.lines()::firstOpen));
    }

    private Node afterLines(final Mark mark) {
        return ways.from(mark, Buttons.plain(LineTexts.of("workings"), model::explain));
    }

    private static List<Node> waiting() {
        return List.of(Texts.soft(PracticeTexts.of("figure.waiting")));
    }

    private List<Node> askedBack() {
        return List.of(new Notice(Verdict.CAUTION, explanation()));
    }

    private String explanation() {
        return model.mark().get().map(Mark::explanation).orElse("");
    }

    private List<Node> marked() {
        final List<Node> parts = new ArrayList<>();
        final Mark mark = model.mark().get().orElseThrow();
        parts.add(new Notice(LineVerdict.of(mark).sign(), mark.explanation()));
        parts.add(
                new Conductor(
                        model.comparison(),
                        PracticeTexts.of("what-gives", "figure", mark.understood())));
        danger(mark).ifPresent(parts::add);
        parts.add(ways.from(mark, again(), way.lesson()));
        return parts;
    }

    private Button again() {
        return way.plain(PracticeTexts.of("again"), model::again);
    }

    private static Optional<Node> danger(final Mark mark) {
        return mark.danger()
                .filter(danger -> danger == Danger.FIRE)
                .map(danger -> new Badge(Verdict.CAUTION, PracticeTexts.of("fire")));
    }

    /** The workings would tell the line that is asked for, so they wait. */
    private List<Node> settling() {
        final Notice notice = new Notice(Verdict.UNSOUND, explanation());
        final Button workings = Buttons.plain(LineTexts.of("workings"), model::showWorkings);
        if (model.mark().get().filter(Mark::asksAgain).isPresent()) {
            return List.of(notice, row(WayOn.first(again()), workings));
        }
        final Button line = Buttons.plain(LineTexts.of("answer-that-line"), model::askSettlingLine);
        return List.of(notice, row(WayOn.first(line), workings, again()));
    }

    private List<Node> rule() {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(PracticeTexts.of("rule.title")));
        int number = 1;
        for (final Comparison.Row row :
                Comparison.sound(model.exercise().worked(), model.exercise().asked()).rows()) {
            parts.add(Texts.paragraph(number++ + ".  " + row.sound().formula()));
        }
        parts.add(Texts.soft(PracticeTexts.of("rule.aided")));
        return List.of(Cards.card(parts.toArray(Node[]::new)));
    }
}
