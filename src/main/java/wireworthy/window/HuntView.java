package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.practice.SlipHunt;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Conductor;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.PickList;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** A working with a slip in it: its rows to point at, and a field for what should stand there. */
final class HuntView implements ExerciseView {
    private final HuntModel model;
    private final WayOn way;
    private final PickList rows;
    private final VBox answering = new VBox();
    private final VBox place = new VBox();
    private final VBox beside = new VBox();

    HuntView(final HuntModel model, final WayOn way) {
        this.model = model;
        this.way = way;
        rows = new PickList(PracticeTexts.of("hunt.ask"), texts(), model::pick);
        answering.getStyleClass().add(Styles.TIGHT);
        place.getStyleClass().add(Styles.TIGHT);
        beside.getStyleClass().add(Styles.TIGHT);
        answering.getChildren().setAll(rows, place);
        model.picked().subscribe(row -> row.ifPresent(this::open));
        model.found().subscribe(found -> beside.getChildren().setAll(said(found)));
    }

    private List<String> texts() {
        final List<String> texts = new ArrayList<>();
        for (final SlipHunt.Row row : model.exercise().rows()) {
            texts.add(
                    PracticeTexts.of(
                            "hunt.row",
                            "number",
                            texts.size() + 1,
                            "formula",
                            row.formula(),
                            "numbers",
                            row.numbers()));
        }
        return texts;
    }

    private void open(final int row) {
        final Label ask =
                Texts.paragraph(
                        PracticeTexts.of(
                                "hunt.place",
                                "number",
                                row + 1,
                                "quantity",
                                model.figure(row).quantity().words()));
        place.getChildren().setAll(ask, new FigureField(model.figure(row), model::answer));
        IntoView.bring(place);
    }

    private List<Node> said(final HuntModel.Found found) {
        return switch (found) {
            case NOT_YET -> List.of(Texts.soft(PracticeTexts.of("hunt.waiting")));
            case TOO_EARLY -> again(Verdict.UNSOUND, PracticeTexts.of("hunt.too-early"));
            case TOO_LATE -> again(Verdict.UNSOUND, PracticeTexts.of("hunt.too-late"));
            case ASKED_BACK -> List.of(new Notice(Verdict.CAUTION, model.explanation()));
            case ROW -> again(Verdict.CAUTION, theRowAlone());
            case BOTH -> told(PracticeTexts.of("hunt.both", "mark", model.explanation()));
            case TOLD -> told(PracticeTexts.of("hunt.told"));
        };
    }

    private String theRowAlone() {
        return PracticeTexts.of("hunt.row-alone", "mark", model.explanation());
    }

    private List<Node> again(final Verdict verdict, final String words) {
        return List.of(
                new Notice(verdict, words),
                Texts.soft(PracticeTexts.of("hunt.again")),
                Buttons.row(
                        WayOn.first(Buttons.plain(PracticeTexts.of("hunt.tell"), model::tell)),
                        way.next()));
    }

    private List<Node> told(final String words) {
        final boolean found = model.found().get() == HuntModel.Found.BOTH;
        return List.of(
                new Notice(found ? Verdict.SOUND : Verdict.CAUTION, words),
                new Conductor(model.comparison(), PracticeTexts.of("hunt.with-slip")),
                found
                        ? Buttons.row(WayOn.first(way.next()), way.twin())
                        : Buttons.row(WayOn.first(way.twin()), way.next(), way.lesson()));
    }

    @Override
    public Node answering() {
        return answering;
    }

    @Override
    public Node beside() {
        return beside;
    }

    @Override
    public void focus() {
        rows.focus();
    }
}
