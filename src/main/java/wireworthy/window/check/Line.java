package wireworthy.window.check;

import wireworthy.window.parts.Icon;
import wireworthy.window.parts.Verdict;

/**
 * A line of what is said of a part.
 *
 * @param look how it is shown
 * @param head its first words, which stand out; empty where there are none
 */
record Line(Look look, String head, String text) {
    /** Lines that look the same take over each other's place in the window. */
    sealed interface Look {
        /** A text of one of the usual sizes. */
        enum Plain implements Look {
            SUBTITLE,
            SOFT,
            PROSE
        }

        /** A word or two with their sign. */
        record OfBadge(Verdict verdict, Icon sign) implements Look {}

        /** What must not be missed. */
        record OfNotice(Verdict verdict, Icon sign, boolean headed) implements Look {}
    }

    static Line subtitle(final String text) {
        return new Line(Look.Plain.SUBTITLE, "", text);
    }

    static Line soft(final String text) {
        return new Line(Look.Plain.SOFT, "", text);
    }

    static Line prose(final String text) {
        return new Line(Look.Plain.PROSE, "", text);
    }

    static Line badge(final Verdict verdict, final String text) {
        return badge(verdict, verdict.icon(), text);
    }

    static Line badge(final Verdict verdict, final Icon sign, final String text) {
        return new Line(new Look.OfBadge(verdict, sign), "", text);
    }

    static Line notice(final Verdict verdict, final String text) {
        return new Line(new Look.OfNotice(verdict, verdict.icon(), false), "", text);
    }

    static Line notice(
            final Verdict verdict, final Icon sign, final String head, final String text) {
        return new Line(new Look.OfNotice(verdict, sign, true), head, text);
    }
}
