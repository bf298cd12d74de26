package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.marking.Mark;
import wireworthy.practice.LineState;
import wireworthy.practice.LineTexts;
import wireworthy.practice.ProblemLine;
import wireworthy.rules.FigureText;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Conductor;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** One line of a working as a joint of the conductor: shown, folded, or with a field to fill in. */
final class LineView extends HBox {
    /** What a line has done to it. */
    interface Doing {
        /** The field was left, by a key or on the way elsewhere. */
        void left(LineRow row);

        /** Enter was pressed in the field. */
        void entered(LineRow row);

        void help(LineRow row);

        void ask(LineRow row);
    }

    private final LineRow row;
    private final Doing doing;
    private final Label state = small("");
    private final TextField field = new TextField();
    private final Button help;
    private final VBox body = new VBox();
    private final VBox said = new VBox();
    private final VBox helped = new VBox();
    private final FlowPane answered = new FlowPane();

    LineView(final LineRow row, final Doing doing) {
        this.row = row;
        this.doing = doing;
        help = Buttons.plain("", this::helpOn);
        help.setMnemonicParsing(true);
        help.getStyleClass().add(Styles.SMALL);
        answered.getStyleClass().add(Styles.BUTTON_ROW);
        body.getStyleClass().add(Styles.TIGHT);
        final VBox whole = new VBox(head(), body);
        whole.getStyleClass().add(Styles.WORKING_LINE);
        HBox.setHgrow(whole, Priority.ALWAYS);
        getChildren().setAll(Conductor.rail(), whole);
        managedWhenFilled(said);
        managedWhenFilled(helped);
        fillIn();
        row.state().subscribe(any -> redraw());
        row.waitsFor().subscribe(any -> redraw());
        row.mark().subscribe(this::say);
        row.helped().subscribe(any -> showHelp());
    }

    private static void managedWhenFilled(final VBox box) {
        box.managedProperty().bind(Bindings.isNotEmpty(box.getChildren()));
    }

    /** Puts the keyboard into the field. */
    void focusField() {
        field.requestFocus();
    }

    private FlowPane head() {
        final Label name = new Label(row.line().number() + "  " + row.line().name());
        name.getStyleClass().add(Styles.STRONG);
        name.setWrapText(true);
        final FlowPane head = new FlowPane(name, state);
        head.getStyleClass().add(Styles.BUTTON_ROW);
        return head;
    }

    private void fillIn() {
        final String unit = FigureText.unit(row.ref().quantity().dimension());
        field.setPromptText(unit);
        field.setPrefColumnCount(9);
        field.setAccessibleText(row.line().name());
        final String line = text("line");
        field.setAccessibleHelp(
                unit.isEmpty() ? line : line + ", " + LineTexts.of("in-unit", "unit", unit));
        field.textProperty().bindBidirectional(row.typed());
        field.setOnAction(event -> doing.entered(row));
        field.focusedProperty()
                .addListener(
                        (any, was, is) -> {
                            if (is) {
                                IntoView.bring(this);
                            } else {
                                doing.left(row);
                            }
                        });
    }

    private void redraw() {
        state.setText(stateWords());
        body.getChildren()
                .setAll(
                        switch (row.state().get()) {
                            case SHOWN -> shown();
                            case FOLDED -> folded();
                            case ASKED -> List.of(answered, said, helped, help);
                        });
    }

    private String stateWords() {
        final boolean withHelp = row.state().get() == LineState.ASKED && row.helped().get() > 0;
        return withHelp ? LineTexts.of("state.helped") : row.state().get().words();
    }

    private List<Node> shown() {
        final List<Node> parts = new ArrayList<>();
        final ProblemLine line = row.line();
        parts.add(small(line.told().formula()));
        if (row.waitsFor().get().isEmpty()) {
            parts.add(Texts.paragraph(Texts.kept(line.told().numbers())));
            line.told().source().ifPresent(source -> parts.add(small(source.text())));
        } else {
            parts.add(small(waiting(row.waitsFor().get())));
        }
        parts.add(unfold("unfold.shown"));
        return parts;
    }

    private static String waiting(final List<Integer> lines) {
        final List<String> numbers = lines.stream().map(String::valueOf).toList();
        return LineTexts.of(
                lines.size() == 1 ? "waits.one" : "waits.several",
                "lines",
                String.join(", ", numbers));
    }

    private List<Node> folded() {
        return List.of(small(LineTexts.of("folded")), unfold("unfold.folded"));
    }

    private Button unfold(final String key) {
        final Button unfold =
                Buttons.plain(
                        text(key),
                        () -> {
                            doing.ask(row);
                            focusField();
                        });
        unfold.getStyleClass().add(Styles.SMALL);
        unfold.setAccessibleText(text(key) + ", " + row.line().name());
        return unfold;
    }

    private void say(final Optional<Mark> mark) {
        answered.getChildren().setAll(field);
        said.getChildren().clear();
        mark.ifPresent(
                now -> {
                    final LineVerdict verdict = LineVerdict.of(now);
                    answered.getChildren().add(new Badge(verdict.sign(), verdict.words()));
                    if (!now.understood().isEmpty()) {
                        said.getChildren()
                                .add(small(LineTexts.of("read-as", "figure", now.understood())));
                    }
                    if (verdict != LineVerdict.SOUND) {
                        said.getChildren().add(new Notice(verdict.sign(), now.explanation()));
                    }
                });
    }

    private void helpOn() {
        doing.help(row);
        IntoView.bring(this);
    }

    private void showHelp() {
        state.setText(stateWords());
        helped.getChildren()
                .setAll(row.help().stream().map(Texts::kept).map(Texts::paragraph).toList());
        help.setText(
                row.nextHelp()
                        .map(level -> LineTexts.of("help", filling("next", level.next())))
                        .orElse(text("help.none")));
        help.setAccessibleText(
                row.nextHelp()
                        .map(level -> LineTexts.of("help.read", readFilling(level.next())))
                        .orElse(text("help.none")));
        help.setDisable(row.nextHelp().isEmpty());
    }

    private String text(final String key) {
        return LineTexts.of(key, "number", row.line().number());
    }

    private Object[] filling(final String name, final String value) {
        return new Object[] {"number", row.line().number(), name, value};
    }

    private Object[] readFilling(final String next) {
        return new Object[] {
            "number",
            row.line().number(),
            "name",
            row.line().name(),
            "next",
            next,
            "level",
            row.helped().get() + 1
        };
    }

    private static Label small(final String text) {
        final Label label = Texts.soft(text);
        label.getStyleClass().add(Styles.SMALL);
        return label;
    }
}
