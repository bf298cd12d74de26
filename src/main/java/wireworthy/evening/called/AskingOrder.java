package wireworthy.evening.called;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.evening.Asked;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Task;
import wireworthy.texts.TextBundle;

/** Steps to be put in order, asked of a group: it calls out rows of letters. */
final class AskingOrder implements Asking {
    private static final TextBundle TEXTS = new TextBundle("called");

    private final OrderProblem order;

    AskingOrder(final OrderProblem order) {
        this.order = order;
    }

    @Override
    public String ask() {
        return order.ask();
    }

    @Override
    public List<String> lettered() {
        return order.shown().stream().map(i -> order.stages().get(i).text()).toList();
    }

    @Override
    public List<WallLine> lines() {
        return IntStream.range(0, order.stages().size()).<WallLine>mapToObj(this::line).toList();
    }

    private WallLine line(final int place) {
        final Task.Stage stage = order.stages().get(place);
        return new WallLine.Words(
                TEXTS.of(
                        "stage",
                        "number",
                        place + 1,
                        "letter",
                        letter(place),
                        "stage",
                        stage.text()),
                stage.why());
    }

    /** The letter under which the step of a place is shown. */
    private String letter(final int place) {
        return Asked.letter(order.shown().indexOf(place));
    }

    /** "BCAD", "B C A D; B A C D". */
    @Override
    public Taken take(final String typed) {
        final List<String> rows =
                Stream.of(typed.toUpperCase(Locale.ROOT).split("[;\\n\\r]+"))
                        .map(row -> row.replaceAll("[\\s,.-]+", ""))
                        .filter(row -> !row.isEmpty())
                        .toList();
        if (rows.isEmpty() || !rows.stream().allMatch(this::whole)) {
            return new Taken.Back(
                    TEXTS.of("rows", "last", Asked.letter(order.stages().size() - 1)));
        }
        final List<Called> all = new ArrayList<>();
        rows.forEach(row -> all.add(called(row)));
        return new Taken.Answers(all);
    }

    /** Whether each letter stands in it once. */
    private boolean whole(final String row) {
        return row.length() == order.stages().size()
                && row.chars().distinct().count() == row.length()
                && row.chars().allMatch(c -> c >= 'A' && c < 'A' + order.stages().size());
    }

    private Called called(final String row) {
        final List<Integer> stages =
                row.chars().mapToObj(letter -> order.shown().get(letter - 'A')).toList();
        final String shown = String.join(" ", row.split(""));
        final OptionalInt departs = order.departsAt(stages);
        if (departs.isEmpty()) {
            return new Called(shown, Origin.of(Origin.Kind.SOUND, "sound", TEXTS.of("sound"), ""));
        }
        final int place = departs.getAsInt();
        return new Called(
                shown,
                Origin.of(
                        Origin.Kind.SLIP,
                        String.valueOf(place),
                        TEXTS.of("departs", "number", place + 1),
                        TEXTS.of(
                                "belongs",
                                "number",
                                place + 1,
                                "letter",
                                letter(place),
                                "why",
                                order.why(place))));
    }
}
