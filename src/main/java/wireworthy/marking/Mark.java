package wireworthy.marking;

import java.util.List;
import java.util.Optional;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Danger;

/**
 * What is said of one answer.
 *
 * @param ref what was answered
 * @param given as typed
 * @param reading how it was understood
 * @param sound right in itself; empty where the figure has to be asked about or can't be read, or
 *     goes with what stood there before
 * @param follows right when worked from the learner's own earlier answers
 * @param diagnosis what is found out about it where it is unsound
 * @param explanation for people
 */
public record Mark(
        Ref ref,
        String given,
        Reading reading,
        Optional<Boolean> sound,
        boolean follows,
        Diagnosis diagnosis,
        String explanation) {
    /** Whether it is sound beyond doubt. */
    public boolean isSound() {
        return sound.orElse(false);
    }

    /** Whether the figure itself is in question, so that it does not count as an answer yet. */
    public boolean asksBack() {
        return sound.isEmpty()
                || (reading instanceof Reading.Read read && Soundness.belowNothing(ref, read));
    }

    /** The same with other words. */
    public Mark saying(final String words) {
        return new Mark(ref, given, reading, sound, follows, diagnosis, words);
    }

    /** Right from the figures before it, which lead where they lead. */
    public Mark following(final String words) {
        final Diagnosis leading = Diagnosis.NONE.leadingTo(danger());
        return new Mark(ref, given, reading, Optional.of(false), true, leading, words);
    }

    /** Neither sound nor a slip: the words say what to think of it. */
    public Mark inQuestion(final String words) {
        return new Mark(ref, given, reading, Optional.empty(), false, Diagnosis.NONE, words);
    }

    /** What explains it, the likeliest first; empty where nothing known does. */
    public List<Outcome> explained() {
        return diagnosis.explained();
    }

    /** The pairs of slips that fit it, to be kept until the next problem shows one again. */
    public List<Outcome> suspected() {
        return diagnosis.suspected();
    }

    /** The quantity whose answer would settle which slips it was. */
    public Optional<Ref> ask() {
        return diagnosis.ask();
    }

    /** Whether the figure itself should be typed once more, its decimal point looked at. */
    public boolean asksAgain() {
        return diagnosis.asksAgain(ref);
    }

    /** What acting on it would lead to, where it is unsound. */
    public Optional<Danger> danger() {
        return diagnosis.danger();
    }

    /** Whether the figure is a value, rounded to the digits typed, which are more than one. */
    public boolean isRounded(final double value) {
        return reading instanceof Reading.Read read
                && read.significantDigits() > 1
                && !ref.quantity().chosen()
                && Fit.holds(ref, read, value);
    }

    /** Whether it was typed in so many digits. */
    public boolean showsDigits(final int least) {
        return reading instanceof Reading.Read read && read.significantDigits() >= least;
    }

    /** Whether there is nothing to say of it but that it is sound. */
    public boolean isPlainlySound() {
        return isSound()
                && reading instanceof Reading.Read read
                && explanation.equals(Explaining.plainlySound(ref, read));
    }

    /** How the figure was understood, in words. */
    public String understood() {
        if (reading instanceof Reading.Read read) {
            return read.text();
        }
        return reading instanceof Reading.Unclear unclear
                ? unclear.first().text() + " or " + unclear.second().text()
                : "";
    }
}
