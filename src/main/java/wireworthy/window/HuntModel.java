package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.marking.Comparison;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.practice.SlipHunt;

/** A working with a slip in it, while the slip is looked for. */
public final class HuntModel implements ExerciseModel {
    /** How far it has come. */
    public enum Found {
        NOT_YET,
        /** A row before the slip was picked. */
        TOO_EARLY,
        /** A row after the slip was picked. */
        TOO_LATE,
        /** The row is right, the figure has to be asked about. */
        ASKED_BACK,
        /** The row is right, the figure is not. */
        ROW,
        /** Row and figure are right. */
        BOTH,
        /** The workings are shown. */
        TOLD
    }

    private final SlipHunt hunt;
    private final Keeping keeping;
    private final List<TypedFigure> figures;
    private final ReadOnlyObjectWrapper<OptionalInt> picked =
            new ReadOnlyObjectWrapper<>(OptionalInt.empty());
    private final ReadOnlyObjectWrapper<Found> found = new ReadOnlyObjectWrapper<>(Found.NOT_YET);
    private Optional<Mark> mark = Optional.empty();
    private String marked = "";

    HuntModel(final SlipHunt hunt, final Keeping keeping) {
        this.hunt = hunt;
        this.keeping = keeping;
        figures = hunt.rows().stream().map(row -> new TypedFigure(row.ref().quantity())).toList();
    }

    private SlipHunt.Row wrong() {
        return hunt.rows().get(hunt.wrong());
    }

    @Override
    public SlipHunt exercise() {
        return hunt;
    }

    /** Points at a row, from 0. */
    public void pick(final int row) {
        picked.set(OptionalInt.of(row));
    }

    /** The row that is pointed at. */
    public ReadOnlyObjectProperty<OptionalInt> picked() {
        return picked.getReadOnlyProperty();
    }

    /** What is typed for a row. */
    public TypedFigure figure(final int row) {
        return figures.get(row);
    }

    /**
     * Marks the row that is pointed at and the figure typed for it; nothing is done where they are
     * the ones marked before, or the right row has no figure yet.
     */
    @Override
    public void answer() {
        picked.get().ifPresent(this::answer);
    }

    @Override
    public void takeOver(final ExerciseModel earlier) {
        if (earlier instanceof HuntModel other) {
            for (int i = 0; i < figures.size(); i++) {
                figures.get(i).text().set(other.figures.get(i).text().get());
            }
            marked = other.marked;
            mark = other.mark.map(it -> Marker.mark(hunt.problem().worked(), it.ref(), it.given()));
            picked.set(other.picked.get());
            found.set(other.found.get());
            keeping.takeOver(other.keeping);
        }
    }

    private void answer(final int row) {
        final String typed = figures.get(row).text().get().strip();
        final String now = row + " " + typed;
        if (typed.isEmpty() || marked.equals(now)) {
            return;
        }
        marked = now;
        if (row == hunt.wrong()) {
            figureMarked(Marker.mark(hunt.problem().worked(), wrong().ref(), typed));
        } else {
            keeping.keep(notThere(row, typed));
            found.set(row < hunt.wrong() ? Found.TOO_EARLY : Found.TOO_LATE);
        }
    }

    private Attempt notThere(final int row, final String typed) {
        final String given = PracticeTexts.of("hunt.given", "number", row + 1, "figure", typed);
        return Attempt.at(Optional.of(wrong().ref().quantity()), given, false, Optional.empty());
    }

    private void figureMarked(final Mark marked) {
        mark = Optional.of(marked);
        if (marked.asksBack()) {
            found.set(Found.ASKED_BACK);
            return;
        }
        keeping.keep(Attempt.of(marked));
        found.set(marked.isSound() ? Found.BOTH : Found.ROW);
    }

    /** Shows both workings; an answer given after that is aided. */
    public void tell() {
        keeping.aid();
        found.set(Found.TOLD);
    }

    public ReadOnlyObjectProperty<Found> found() {
        return found.getReadOnlyProperty();
    }

    /** What is said of the figure; empty until the right row was picked. */
    public String explanation() {
        return mark.map(Mark::explanation).orElse("");
    }

    /** The sound working beside the one with the slip. */
    public Comparison comparison() {
        return Comparison.of(hunt.problem().worked(), hunt.problem().asked(), hunt.slip());
    }
}
