package wireworthy.window;

import java.util.Locale;
import wireworthy.marking.Mark;
import wireworthy.practice.LineTexts;
import wireworthy.window.parts.Verdict;

/** What is said of the figure of a line in a word and a sign. */
enum LineVerdict {
    SOUND(Verdict.SOUND),
    FOLLOWS(Verdict.CAUTION),
    UNSOUND(Verdict.UNSOUND),
    UNREAD(Verdict.CAUTION);

    private final Verdict sign;

    LineVerdict(final Verdict sign) {
        this.sign = sign;
    }

    static LineVerdict of(final Mark mark) {
        if (mark.asksBack()) {
            return UNREAD;
        }
        if (mark.isSound()) {
            return SOUND;
        }
        return mark.follows() ? FOLLOWS : UNSOUND;
    }

    Verdict sign() {
        return sign;
    }

    String words() {
        return LineTexts.of("mark." + name().toLowerCase(Locale.ROOT));
    }
}
