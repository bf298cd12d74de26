package wireworthy.evening.called;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wireworthy.marking.Comparison;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.marking.Outcome;
import wireworthy.practice.Problem;
import wireworthy.rules.Reading;
import wireworthy.texts.TextBundle;
import wireworthy.working.Worked;

/** A figure asked of a group. */
final class AskingFigure implements Asking {
    private static final TextBundle TEXTS = new TextBundle("called");
    private static final TextBundle SLIPS = new TextBundle("slips");

    private final Worked worked;
    private final Problem.Part part;

    AskingFigure(final Worked worked, final Problem.Part part) {
        this.worked = worked;
        this.part = part;
    }

    @Override
    public String ask() {
        return part.ask();
    }

    @Override
    public List<String> lettered() {
        return List.of();
    }

    @Override
    public List<WallLine> lines() {
        return Comparison.sound(worked, part.ref()).rows().stream()
                .<WallLine>map(WallLine.Sum::new)
                .toList();
    }

    @Override
    public Taken take(final String typed) {
        final List<Called> all = new ArrayList<>();
        for (final String piece : CalledText.pieces(typed)) {
            final CalledText text = new CalledText(piece, part.ref().quantity().dimension());
            if (text.twoMeanings()) {
                return new Taken.Back(TEXTS.of("one-or-more", "typed", piece));
            }
            for (final String figure : text.figures()) {
                final Mark mark = Marker.mark(worked, part.ref(), figure);
                if (mark.asksBack()) {
                    return new Taken.Back(mark.explanation());
                }
                all.add(called(mark));
            }
        }
        return all.isEmpty() ? new Taken.Back(TEXTS.of("nothing")) : new Taken.Answers(all);
    }

    private Called called(final Mark mark) {
        final String shown =
                mark.reading() instanceof Reading.Read read
                        ? read.inItsOwnUnit()
                        : mark.understood();
        return new Called(shown, origin(mark));
    }

    private Origin origin(final Mark mark) {
        if (mark.isSound()) {
            return Origin.of(Origin.Kind.SOUND, "sound", TEXTS.of("sound"), mark.explanation());
        }
        if (mark.explained().isEmpty()) {
            return Origin.of(
                    Origin.Kind.UNKNOWN, "unknown", TEXTS.of("unknown"), TEXTS.of("unknown.do"));
        }
        return new Origin(
                Origin.Kind.SLIP,
                mark.explained().stream().flatMap(each -> each.ids().stream()).sorted().toList(),
                title(mark),
                mark.explanation(),
                Optional.of(Comparison.of(worked, part.ref(), mark.explained().get(0))));
    }

    /** The slips in short; "perhaps" where a line would have to settle it. */
    private static String title(final Mark mark) {
        final String slips =
                mark.explained().stream()
                        .map(AskingFigure::words)
                        .distinct()
                        .collect(Collectors.joining(TEXTS.of("or")));
        return mark.ask().isPresent() ? TEXTS.of("perhaps", "slips", slips) : slips;
    }

    private static String words(final Outcome outcome) {
        return outcome.ids().stream()
                .map(id -> SLIPS.of(id + ".short"))
                .collect(Collectors.joining(TEXTS.of("and")));
    }
}
