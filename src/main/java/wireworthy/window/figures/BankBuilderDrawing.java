package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** Strings of batteries between two bars, a fuse at the plus of each; the bank's figures beside. */
final class BankBuilderDrawing extends Drawing {
    private static final double ROOM_FOR_BOTH = 45;
    private static final double BATTERY = 2.6;
    private static final double TALL = 1.8;
    private static final double FUSE = 2.2;
    private static final double FIRST = 3.4;
    private static final double STEP = 2.7;
    private static final double ROW = 1.75;
    private static final double THICK = 0.16;

    /** Room for the longest of the usual verdicts, so that nothing jumps. */
    private static final double FOUR_LINES = 6.5;

    private final BankBuilder model;
    private final Line plusBar = line(Styles.FEED_LINE);
    private final Line minusBar = line(Styles.FEED_LINE);
    private final List<Row> strings = new ArrayList<>();
    private final Label plus = text(Styles.STRONG);
    private final Label minus = text(Styles.STRONG);
    private final Label each = text(Styles.SOFT, Styles.SMALL);
    private final Line tap = line(Styles.LIMIT_LINE);
    private final Circle tapJoint = add(new Circle(), Styles.RING);
    private final Label tapWords = text(Styles.UNSOUND_TEXT, Styles.SMALL);
    private final CheckBox tapBox = add(new CheckBox(), Styles.SWITCH);
    private final List<Figures> figures = new ArrayList<>();
    private final VerdictLine verdict = add(new VerdictLine());
    private final VerdictLine fault = add(new VerdictLine());
    private final Label caution = across(new Label(), Styles.SOFT, Styles.SMALL);

    /** A string: its conductor in pieces, from the plus bar by the fuse to the minus bar. */
    private record Row(List<Line> pieces, Symbol fuse, List<Symbol> batteries) {}

    private record Figures(Label name, Label sum, Label result) {}

    BankBuilderDrawing(final BankBuilder model) {
        this.model = model;
        Stream.generate(this::row).limit(model.mostStrings()).forEach(strings::add);
        model.now().getValue().rows().forEach(each -> figures.add(figures()));
        caution.setText(BankBuilder.caution());
        minus.setText("−");
        tapBox.setWrapText(true);
        tapBox.selectedProperty().bindBidirectional(model.tap());
        tap.toFront();
        tapJoint.toFront();
        model.now().addListener((of, before, shown) -> show(shown));
        show(model.now().getValue());
    }

    private Row row() {
        final int longest = model.longest();
        return new Row(
                Stream.generate(() -> line(Styles.FEED_LINE)).limit(longest + 2).toList(),
                add(Symbol.fuse()),
                Stream.generate(() -> add(Symbol.battery())).limit(longest).toList());
    }

    private Figures figures() {
        return new Figures(text(Styles.SOFT), text(Styles.SOFT, Styles.SMALL), text(Styles.STRONG));
    }

    private void show(final BankBuilder.Shown shown) {
        plus.setText("+ " + shown.volts());
        tapWords.setText("✗ " + shown.tapVolts());
        each.setText(shown.each());
        tapBox.setText(FigureTexts.of("bank.tap", "volts", Texts.kept(shown.tapVolts())));
        tapBox.setDisable(shown.series() == 1);
        for (int i = 0; i < figures.size(); i++) {
            figures.get(i).name().setText(shown.rows().get(i).name());
            figures.get(i).sum().setText(shown.rows().get(i).sum() + " =");
            figures.get(i).result().setText(shown.rows().get(i).result());
        }
        verdict.say(shown.sound(), shown.verdict());
        fault.say(shown.pastBlades() ? Verdict.CAUTION : Verdict.SOUND, shown.fault());
        requestLayout();
    }

    @Override
    double height(final double width) {
        return foot(width) + Math.max(FOUR_LINES, stacked(width, lines()));
    }

    /** The worst first. */
    private Label[] lines() {
        return model.now().getValue().sound()
                ? new Label[] {fault, verdict, caution}
                : new Label[] {verdict, fault, caution};
    }

    private double foot(final double width) {
        final double table = figures.size() * ROW;
        return (beside(width) ? Math.max(bankHeight(), table) : bankHeight() + table) + 0.8;
    }

    private static boolean beside(final double width) {
        return width >= ROOM_FOR_BOTH;
    }

    private double bankHeight() {
        return FIRST + STEP * (strings.size() - 1) + TALL / 2 + 4;
    }

    @Override
    void draw(final double width) {
        final double right = beside(width) ? width * 0.5 : width;
        bank(right);
        lay(tapBox, 0, bankHeight() - 2, right, 2);
        if (beside(width)) {
            table(right + 2, width, 0.5);
        } else {
            table(0, width, bankHeight() + 0.4);
        }
        stack(width, foot(width), lines());
    }

    private void bank(final double right) {
        final BankBuilder.Shown shown = model.now().getValue();
        final double from = 1;
        final double to = right - 1.5;
        final double last = y(shown.parallel() - 1);
        for (int i = 0; i < strings.size(); i++) {
            row(strings.get(i), i < shown.parallel(), from, to, y(i));
        }
        lay(plusBar, from, FIRST - 1.6, from, last);
        lay(minusBar, to, FIRST - 1.6, to, last);
        thick(plusBar, 2 * THICK);
        thick(minusBar, 2 * THICK);
        put(plus, Pos.TOP_LEFT, 0.6, 0.2);
        put(minus, Pos.TOP_CENTER, to, 0.2);
        put(each, Pos.TOP_CENTER, (from + to) / 2, last + TALL / 2 + 0.2);
        tap(shown, from, to);
    }

    /** How deep a string lies: those there are share the room of all there can be. */
    private double y(final int place) {
        final double step = STEP * strings.size() / model.now().getValue().parallel();
        return FIRST + step * (place + 0.5) - STEP / 2;
    }

    private void row(
            final Row row,
            final boolean there,
            final double from,
            final double to,
            final double y) {
        final int number = there ? model.now().getValue().series() : 0;
        final double fuse = from + 0.8;
        lay(row.fuse(), fuse, y - 0.45, FUSE, 0.9);
        row.fuse().setVisible(there);
        piece(row.pieces().get(0), there, from, fuse, y);
        double end = fuse + FUSE;
        for (int i = 0; i < row.batteries().size(); i++) {
            final double left = middle(i, from, to) - BATTERY / 2;
            lay(row.batteries().get(i), left, y - TALL / 2, BATTERY, TALL);
            row.batteries().get(i).setVisible(i < number);
            piece(row.pieces().get(i + 1), i < number, end, left, y);
            end = i < number ? left + BATTERY : end;
        }
        piece(row.pieces().get(row.batteries().size() + 1), there, end, to, y);
    }

    private void piece(
            final Line piece,
            final boolean there,
            final double from,
            final double to,
            final double y) {
        lay(piece, from, y, to, y);
        thick(piece, THICK);
        piece.setVisible(there);
    }

    /** Where the middle of a battery stands, counted from the plus. */
    private double middle(final int place, final double from, final double to) {
        final double room = to - from - FUSE - 1.4;
        final int number = model.now().getValue().series();
        return from + FUSE + 1.2 + room * (place + 0.5) / number;
    }

    /** The tap between the last two batteries of the first string. */
    private void tap(final BankBuilder.Shown shown, final double from, final double to) {
        final boolean there = shown.tapped();
        final int last = shown.series() - 1;
        final double x = (middle(last, from, to) + middle(Math.max(0, last - 1), from, to)) / 2;
        lay(tap, x, y(0), x, y(0) - 1.8);
        tapJoint.setCenterX(x * em());
        tapJoint.setCenterY(y(0) * em());
        tapJoint.setRadius(0.3 * em());
        put(tapWords, Pos.TOP_CENTER, x, y(0) - 3.2);
        tap.setVisible(there);
        tapJoint.setVisible(there);
        tapWords.setVisible(there);
    }

    private void table(final double left, final double right, final double top) {
        final double results =
                figures.stream().mapToDouble(row -> width(row.result())).max().orElse(0);
        for (int i = 0; i < figures.size(); i++) {
            final Figures row = figures.get(i);
            final double y = top + i * ROW;
            put(row.name(), Pos.TOP_LEFT, left, y);
            put(row.sum(), Pos.TOP_RIGHT, right - results - 0.6, y + 0.1);
            put(row.result(), Pos.TOP_RIGHT, right, y);
        }
    }
}
