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
 * @param sound right in itself; empty where the figure has to be asked about or can't be read
 * @param follows right when worked from the learner's own earlier answers
 * @param explained what explains it, the likeliest first; empty where nothing known does
 * @param ask the quantity whose answer would settle which slips it was
 * @param danger what acting on it would lead to, where it is unsound
 * @param explanation for people
 */
public record Mark(
        Ref ref,
        String given,
        Reading reading,
        Optional<Boolean> sound,
        boolean follows,
        List<Outcome> explained,
        Optional<Ref> ask,
        Optional<Danger> danger,
        String explanation) {
    /** Whether it is sound beyond doubt. */
    public boolean isSound() {
        return sound.orElse(false);
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
