package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.marking.Mark;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.window.parts.Verdict;

/**
 * What makes a part one with a figure to look at, to be named where its state is: why stands beside
 * the figure itself, far below.
 *
 * @param unsound the builder's own figures that are not sound, each with its quantity
 * @param inQuestion those that are neither sound nor a slip
 * @param doubts what is said of figures that are more likely to have another unit
 */
record ToLookAt(List<String> unsound, List<String> inQuestion, List<String> doubts) {
    static ToLookAt of(final List<Mark> marks, final List<FieldNote> notes) {
        return new ToLookAt(
                named(marks, mark -> Differing.isOne(mark) && !mark.asksBack()),
                named(marks, Mark::asksBack),
                notes.stream()
                        .filter(note -> note.kind() == FieldNote.Kind.DOUBT)
                        .map(FieldNote::text)
                        .toList());
    }

    private static List<String> named(final List<Mark> marks, final Predicate<Mark> which) {
        return marks.stream().filter(which).map(ToLookAt::named).toList();
    }

    private static String named(final Mark mark) {
        final String read = mark.understood();
        return CheckTexts.of(
                "own.named",
                "quantity",
                mark.ref().quantity().words(),
                "figure",
                read.isEmpty() ? mark.given() : read);
    }

    List<Line> told() {
        final List<Line> told = new ArrayList<>();
        own("own.unsound", unsound).forEach(told::add);
        own("own.in-question", inQuestion).forEach(told::add);
        if (!doubts.isEmpty()) {
            told.add(
                    Line.notice(
                            Verdict.CAUTION,
                            State.DIFFERS.icon(),
                            CheckTexts.counted("own.doubts", doubts.size()),
                            String.join(" ", doubts)));
        }
        return told;
    }

    private static Stream<Line> own(final String key, final List<String> figures) {
        return figures.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        Line.notice(
                                Verdict.CAUTION,
                                State.DIFFERS.icon(),
                                CheckTexts.counted(key, figures.size()),
                                CheckTexts.of(
                                        "own.why",
                                        "sums",
                                        CheckTexts.of("sums"),
                                        "figures",
                                        listed(figures))));
    }

    private static String listed(final List<String> figures) {
        return figures.stream().collect(Collectors.joining(CheckTexts.of("own.and")));
    }
}
