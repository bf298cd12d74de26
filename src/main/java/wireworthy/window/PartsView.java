package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.marking.Mark;
import wireworthy.practice.Problem;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** Several figures of one circuit, one under the other; the open one has a field. */
final class PartsView implements ExerciseView {
    private final PartsModel model;
    private final WayOn way;
    private final VBox parts = new VBox();
    private final VBox beside = new VBox();
    private FigureField field;

    PartsView(final PartsModel model, final WayOn way) {
        this.model = model;
        this.way = way;
        field = field(model.current());
        parts.getStyleClass().add(Styles.PARTS);
        beside.getStyleClass().add(Styles.TIGHT);
        model.opened().addListener((ListChangeListener<FigureModel>) change -> openNext());
        redraw();
        model.spokenOf().subscribe(this::speakOf);
    }

    private FigureField field(final FigureModel part) {
        part.beside().subscribe(now -> follow(part, now));
        return new FigureField(part.field(), model::answer);
    }

    /** Help with the open part is about that part. */
    private void follow(final FigureModel part, final Beside now) {
        if (now != Beside.NOTHING_YET && part == model.current()) {
            model.speakOfCurrent();
        }
    }

    private void openNext() {
        field = field(model.current());
        redraw();
        focus();
    }

    private void redraw() {
        final List<Node> all = new ArrayList<>();
        final int open = model.opened().size() - 1;
        for (int i = 0; i < model.exercise().parts().size(); i++) {
            all.add(i < open ? answered(i) : i == open ? asked(i) : waiting(i));
        }
        parts.getChildren().setAll(all);
    }

    private String ask(final int number) {
        final Problem.Part part = model.exercise().parts().get(number);
        return PracticeTexts.of("parts.ask", "number", number + 1, "ask", part.ask());
    }

    private Node asked(final int number) {
        final VBox part = new VBox(Texts.strong(ask(number)), field);
        part.getStyleClass().add(Styles.TIGHT);
        return part;
    }

    private Node answered(final int number) {
        final Mark mark = model.opened().get(number).mark().get().orElseThrow();
        final LineVerdict verdict = LineVerdict.of(mark);
        return Buttons.row(
                Texts.paragraph(ask(number)),
                Texts.paragraph(Texts.kept(mark.understood())),
                new Badge(verdict.sign(), verdict.words()));
    }

    private Node waiting(final int number) {
        return Texts.soft(ask(number));
    }

    private void speakOf(final FigureModel part) {
        final List<Node> all = new ArrayList<>();
        if (part == model.current() && model.onOwnFigures()) {
            all.add(new Notice(Verdict.CAUTION, PracticeTexts.of("parts.own-figures")));
        }
        all.add(new FigureBeside(part, way, new Ways(model.opened().indexOf(part))));
        beside.getChildren().setAll(all);
        if (part.beside().get() != Beside.NOTHING_YET) {
            IntoView.bring(beside);
        }
    }

    @Override
    public Node answering() {
        return parts;
    }

    @Override
    public Node beside() {
        return beside;
    }

    @Override
    public void focus() {
        field.focus();
        IntoView.bring(field);
    }

    /** The ways on from one of the parts. */
    private final class Ways implements FigureBeside.Ways {
        private final int number;

        Ways(final int number) {
            this.number = number;
        }

        @Override
        public Node from(final Mark mark, final Button... others) {
            if (number < model.exercise().parts().size() - 1) {
                return fromEarlier(mark, others);
            }
            if (model.allSound()) {
                return way.sound();
            }
            return holds(mark) ? way.unsound() : way.unsound(others);
        }

        private Node fromEarlier(final Mark mark, final Button... others) {
            final Button onward = WayOn.first(way.plain(PracticeTexts.of("go-on"), this::goOn));
            return holds(mark) ? Buttons.row(onward) : FigureBeside.row(onward, others);
        }

        /** The next part may be open already; then only the keyboard goes there. */
        private void goOn() {
            if (number == model.opened().size() - 1) {
                model.goOn();
            }
        }
    }

    private static boolean holds(final Mark mark) {
        return mark.isSound() || mark.follows();
    }
}
