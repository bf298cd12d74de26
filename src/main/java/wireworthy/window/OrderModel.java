package wireworthy.window;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import wireworthy.practice.OrderProblem;

/** Steps as they are being put in order. */
public final class OrderModel implements ExerciseModel {
    /**
     * What is said of an order.
     *
     * @param outAt the first row, from 0, at which another step belongs
     */
    public record Marked(OptionalInt outAt) {}

    private final OrderProblem problem;
    private final Keeping keeping;
    private final ObservableList<Integer> order;

    /** Kept, since whoever listens to it holds on to it only weakly. */
    private final ObservableList<Integer> orderToRead;

    private final ReadOnlyObjectWrapper<Optional<Marked>> marked =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private List<Integer> markedOrder = List.of();

    OrderModel(final OrderProblem problem, final Keeping keeping) {
        this.problem = problem;
        this.keeping = keeping;
        order = FXCollections.observableArrayList(problem.shown());
        orderToRead = FXCollections.unmodifiableObservableList(order);
    }

    @Override
    public OrderProblem exercise() {
        return problem;
    }

    /** The right places of the steps, in the order in which they stand now. */
    public ObservableList<Integer> order() {
        return orderToRead;
    }

    /** What the step in a row says. */
    public String step(final int row) {
        return problem.stages().get(order.get(row)).text();
    }

    /**
     * Moves the step of a row up or down.
     *
     * @param by -1 or 1; nothing is done where there is no row
     * @return where it stands then
     */
    public int move(final int row, final int by) {
        final int to = row + by;
        if (to < 0 || to >= order.size()) {
            return row;
        }
        final List<Integer> moved = new ArrayList<>(order);
        Collections.swap(moved, row, to);
        order.setAll(moved);
        return to;
    }

    /** Marks the order; nothing is done where it is the one marked before. */
    @Override
    public void answer() {
        if (markedOrder.equals(order)) {
            return;
        }
        markedOrder = List.copyOf(order);
        final OptionalInt out = problem.departsAt(markedOrder);
        keeping.keep(Attempt.at(Optional.empty(), typed(), out.isEmpty(), Optional.empty()));
        marked.set(Optional.of(new Marked(out)));
    }

    @Override
    public void takeOver(final ExerciseModel earlier) {
        if (earlier instanceof OrderModel other) {
            order.setAll(other.order);
            markedOrder = other.markedOrder;
            marked.set(other.marked.get());
            keeping.takeOver(other.keeping);
        }
    }

    private String typed() {
        return order.stream()
                .map(place -> String.valueOf(place + 1))
                .collect(Collectors.joining(", "));
    }

    /** What was said of the order when it was last marked. */
    public ReadOnlyObjectProperty<Optional<Marked>> marked() {
        return marked.getReadOnlyProperty();
    }
}
