package wireworthy.vehicle.check;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wireworthy.marking.Mark;
import wireworthy.working.Telling;

/**
 * What comes out, said with a figure that is not sound: in a list, or on paper, nothing stands
 * beside it. Where the words name it already they are left as they are.
 *
 * @param found what comes out, as it is told elsewhere
 */
record WorkedThrough(List<Found> found) {
    List<Mark> told(final List<Mark> marks) {
        return marks.stream().map(this::told).toList();
    }

    private Mark told(final Mark mark) {
        return found.stream()
                .filter(it -> mark.sound().equals(Optional.of(false)) && !mark.asksBack())
                .filter(it -> it.quantity() == mark.ref().quantity() && it.value().isPresent())
                .filter(it -> texts(it).noneMatch(text -> names(mark.explanation(), text)))
                .findFirst()
                .map(it -> Said.of("own.worked", "mark", mark.explanation(), "right", it.text()))
                .map(mark::saying)
                .orElse(mark);
    }

    /** The ways in which it may be told. */
    private static Stream<String> texts(final Found found) {
        final double value = found.value().orElseThrow();
        return Stream.of(found.text(), Telling.exact(found.quantity(), value));
    }

    /** Not as the end of a longer number: 2 A is not named by 12 A. */
    private static boolean names(final String words, final String figure) {
        return Pattern.compile("(?<![\\d.,])" + Pattern.quote(figure) + "(?!\\p{L})")
                .matcher(words)
                .find();
    }
}
