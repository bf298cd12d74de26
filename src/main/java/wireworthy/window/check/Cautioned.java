package wireworthy.window.check;

import java.util.List;
import java.util.Locale;
import wireworthy.window.parts.Icon;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/** Cautions as they are said: what each leads to, and why. */
final class Cautioned {
    private Cautioned() {}

    /** All of them in their order: the worst stands first. */
    static List<Line> all(final List<Caution> cautions) {
        return cautions.stream().map(Cautioned::one).toList();
    }

    private static Line one(final Caution caution) {
        final Danger danger = caution.danger();
        return Line.notice(verdict(danger), sign(danger), words(danger), caution.text());
    }

    /** What comes before figures to look at. */
    static boolean isGrave(final Caution caution) {
        return caution.danger().compareTo(Danger.LESS_ARRIVES) <= 0;
    }

    /** What a danger leads to, as a heading. */
    static String words(final Danger danger) {
        return CheckTexts.of("danger." + danger.name().toLowerCase(Locale.ROOT));
    }

    /** The same sign as that of the state it brings about. */
    static Icon sign(final Danger danger) {
        return switch (danger) {
            case LESS_ARRIVES -> State.LESS_ARRIVES.icon();
            case ONLY_JUST -> State.ONLY_JUST.icon();
            default -> verdict(danger).icon();
        };
    }

    static Verdict verdict(final Danger danger) {
        return danger == Danger.FIRE ? Verdict.UNSOUND : Verdict.CAUTION;
    }
}
