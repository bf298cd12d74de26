package wireworthy.marking;

import java.util.stream.Stream;
import wireworthy.rules.Ref;
import wireworthy.texts.TextBundle;
import wireworthy.working.Line;
import wireworthy.working.Step;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Names the lines of a working, asks for one and says where to open it. */
final class PlainLines {
    private static final TextBundle MARKS = new TextBundle("marks");

    /** Of the 45 allowed; a figure may count three. */
    private static final int MOST_WORDS = 43;

    private static final String EQUALS = " = ";

    private final Worked worked;
    private final boolean asking;

    /**
     * @param asking whether the working is opened line by line: that of a page stands there whole
     */
    PlainLines(final Worked worked, final boolean asking) {
        this.worked = worked;
        this.asking = asking;
    }

    /** What to do where no line alone would tell. */
    String lineByLine() {
        return MARKS.of(asking ? "pairs.do" : "pairs.do.page");
    }

    /** Whether an explanation is short enough to be read. */
    static boolean fits(final String text) {
        return text.split(" ").length <= MOST_WORDS;
    }

    /** A line by name, with the load that it speaks of. */
    String name(final Ref line) {
        final String subject = worked.question().subject(line);
        final String words = line.quantity().words();
        return subject.isEmpty()
                ? words
                : MARKS.of("of").replace("{line}", words).replace("{load}", subject);
    }

    /**
     * The question for the figure that would settle it, with a space before; empty for none.
     *
     * @param answered what was answered, which may be asked for once more
     */
    String question(final Diagnosis found, final Ref answered) {
        return found.ask()
                .map(line -> line.equals(answered) ? "question.again" : kind(line))
                .map(key -> " " + filled(key, found))
                .orElse("");
    }

    /** The question that makes sure of a slip, with a space before. */
    String toBeSure(final Diagnosis found) {
        return " " + filled("to-be-sure." + kind(found.ask().orElseThrow()), found);
    }

    private String kind(final Ref line) {
        return worked.question().figures().containsKey(line) ? "question.given" : "question";
    }

    private String filled(final String key, final Diagnosis found) {
        return MARKS.of(key).replace("{line}", name(found.ask().orElseThrow()));
    }

    /** No slip is known: the line that would tell, else where to open the working. */
    String unknown(final Diagnosis found, final Ref answered) {
        if (found.ask().isPresent()) {
            final String text = MARKS.of(found.asksAgain(answered) ? "again" : "ask");
            return text.replace("{question}", question(found, answered).strip());
        }
        final Ref open = found.open().orElseThrow();
        return worked.wayTo(open).stream()
                .filter(step -> step.direction().output().equals(open))
                .map(step -> opened(found, step, Telling.line(worked, step, worked.values())))
                .findFirst()
                .orElseGet(() -> MARKS.of("unknown.given"));
    }

    /**
     * With formula and numbers where there is room, else the numbers, else the name alone. What is
     * looked up is said in words once.
     */
    private String opened(final Diagnosis found, final Step step, final Line line) {
        final Ref open = step.direction().output();
        final boolean inWords = step.direction().formula().inWords();
        final String text = MARKS.of(found.suspected().isEmpty() ? "unknown" : "unknown.single");
        return Stream.of("open", "open.short", "open.line")
                .filter(way -> !(inWords && way.equals("open")))
                .map(way -> asking ? way : way + ".page")
                .map(way -> text.replace("{open}", MARKS.of(way)))
                .map(way -> way.replace("{line}", name(open)))
                .map(way -> way.replace("{formula}", line.formula()))
                .map(way -> way.replace("{numbers}", sum(line.numbers())))
                .reduce((longer, shorter) -> fits(longer) ? longer : shorter)
                .orElseThrow();
    }

    /** Whether the numbers of a line say what they come to. */
    static boolean hasResult(final String numbers) {
        return numbers.contains(EQUALS);
    }

    /** The sum of a line without what it comes to. */
    static String sum(final String numbers) {
        final int equals = numbers.lastIndexOf(EQUALS);
        return equals < 0 ? numbers : numbers.substring(0, equals);
    }
}
