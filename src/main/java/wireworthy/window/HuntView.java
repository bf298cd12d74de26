package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
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
    /** What a figure begins with. */
    private static final Pattern FIGURE = Pattern.compile("[0-9.,]");

    private final HuntModel model;
    private final WayOn way;
    private final PickList rows;
    private final List<VBox> places = new ArrayList<>();
    private final VBox said = new VBox();
    private final VBox end = new VBox();
    private final VBox beside = new VBox(said);
    private Optional<FigureField> field = Optional.empty();

    HuntView(final HuntModel model, final WayOn way) {
        this.model = model;
        this.way = way;
        rows = new PickList(PracticeTexts.of("hunt.ask"), texts(), model::pick, this::toField);
        for (int i = 0; i < model.exercise().rows().size(); i++) {
            places.add(new VBox());
        }
        rows.getChildren().setAll(IntStream.range(0, places.size()).mapToObj(this::joint).toList());
        rows.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        rows.getStyleClass().setAll(Styles.PICK_LIST, Styles.WORKING);
        for (final VBox box : List.of(said, end, beside)) {
            box.getStyleClass().add(Styles.TIGHT);
        }
        model.picked().subscribe(row -> row.ifPresent(this::open));
        model.found().subscribe(this::say);
    }

    private HBox joint(final int row) {
        final VBox line = new VBox(rows.button(row), places.get(row));
        line.getStyleClass().add(Styles.WORKING_LINE);
        HBox.setHgrow(line, Priority.ALWAYS);
        return new HBox(Conductor.rail(), line);
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
        rows.pick(row);
        final String asks =
                PracticeTexts.of("hunt.place", "quantity", model.figure(row).quantity().words());
        places.forEach(place -> place.getChildren().clear());
        final FigureField opened = new FigureField(model.figure(row), model::answer);
        places.get(row).getChildren().setAll(Texts.paragraph(asks), opened);
        field = Optional.of(opened);
        IntoView.bring(places.get(row));
    }

    /** A figure typed at a line goes into its field. */
    private void typed(final KeyEvent event) {
        final int row = rows.number(event.getTarget());
        if (row >= 0 && FIGURE.matcher(event.getCharacter()).matches() && !event.isShortcutDown()) {
            model.pick(row);
            final StringProperty text = model.figure(row).text();
            text.set(text.get() + event.getCharacter());
            toField();
            event.consume();
        }
    }

    private void toField() {
        field.ifPresent(FigureField::focus);
    }

    private void say(final HuntModel.Found found) {
        final boolean over = found == HuntModel.Found.BOTH || found == HuntModel.Found.TOLD;
        said.getChildren().setAll(said(found));
        end.getChildren().setAll(over ? List.of() : onward(found));
        beside.getChildren().setAll(over ? List.of(said) : List.of(said, rows, end));
        IntoView.bring(said);
    }

    private List<Node> said(final HuntModel.Found found) {
        return switch (found) {
            case NOT_YET -> List.of(Texts.soft(PracticeTexts.of("hunt.waiting")));
            case TOO_EARLY -> List.of(notice(Verdict.UNSOUND, PracticeTexts.of("hunt.too-early")));
            case TOO_LATE -> List.of(notice(Verdict.UNSOUND, PracticeTexts.of("hunt.too-late")));
            case ASKED_BACK -> List.of(notice(Verdict.CAUTION, model.explanation()));
            case ROW -> List.of(notice(Verdict.CAUTION, theRowAlone()));
            case BOTH -> told(PracticeTexts.of("hunt.both", "mark", model.explanation()));
            case TOLD -> told(PracticeTexts.of("hunt.told"));
        };
    }

    private static Notice notice(final Verdict verdict, final String words) {
        return new Notice(verdict, words);
    }

    private String theRowAlone() {
        return PracticeTexts.of("hunt.row-alone", "mark", model.explanation());
    }

    private List<Node> onward(final HuntModel.Found found) {
        if (found == HuntModel.Found.NOT_YET || found == HuntModel.Found.ASKED_BACK) {
            return List.of();
        }
        return List.of(
                Texts.soft(PracticeTexts.of("hunt.again")),
                Buttons.row(Buttons.plain(PracticeTexts.of("hunt.tell"), model::tell), way.next()));
    }

    private List<Node> told(final String words) {
        final boolean found = model.found().get() == HuntModel.Found.BOTH;
        return List.of(
                new Notice(found ? Verdict.SOUND : Verdict.CAUTION, words),
                new Conductor(model.comparison(), PracticeTexts.of("hunt.with-slip")),
                found ? way.sound() : way.unsound(way.lesson()));
    }

    @Override
    public Node answering() {
        return new VBox();
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
