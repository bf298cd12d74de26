package wireworthy.vehicle.check;

import java.util.Optional;
import java.util.regex.Pattern;
import wireworthy.marking.Mark;
import wireworthy.marking.Onward;
import wireworthy.rules.Reading;
import wireworthy.working.Danger;

/**
 * How people round on a page: a figure stands there with few digits, and the next one was worked
 * from it as it stands or from what was still on the calculator.
 */
record OwnRounding(Onward onward, Mark mark) {
    /** As far as a figure of one digit is still taken for a sound one. */
    private static final double MOST = 0.05;

    private static final double WINDOW = 0.001;

    /** A slip this near to the sound figure can't be told from rounding in two digits. */
    private static final double TOO_NEAR = 0.02;

    private static final int FEW_DIGITS = 2;
    private static final Pattern ROUND = Pattern.compile("^\\s*[1-9]\\d*0(?![\\d.,])");

    /** What comes out, worked on from the figures above as they stand; SI. */
    double value() {
        return onward.value(mark.ref());
    }

    private double inFull() {
        return onward.worked().value(mark.ref()).orElse(Double.NaN);
    }

    /** Whether it is what comes out, to the digit typed. */
    boolean toTheDigit() {
        return mark.isRounded(value());
    }

    /** Whether it comes of the figures above as they stand, and not of what they stand for. */
    boolean onlyWithThoseAbove() {
        return mark.isRounded(value()) && !mark.isRounded(inFull());
    }

    /**
     * Whether rounding alone explains it: it lies between what comes of the figures above as they
     * stand and what comes of them in full.
     *
     * @param follows whether a figure above is not sound, so that in full it is not known
     */
    boolean holds(final boolean follows) {
        final double value = value();
        final double slack = Math.min(onward.slack(mark.ref()), MOST * Math.abs(value));
        final double low = follows ? value - slack : Math.min(value, inFull());
        final double high = follows ? value + slack : Math.max(value, inFull());
        return isFigure() && lies(low, high, MOST);
    }

    /** Whether it is what comes out, but in one digit, too far off to be worked on with. */
    boolean coarse() {
        final double value = value();
        return isFigure() && digits() == 1 && lies(value, value, 1);
    }

    /** Whether what explains it may as well be rounding. */
    boolean leavesOpen() {
        return mark.explained().isEmpty()
                || (digits() <= FEW_DIGITS && near(mark.explained().get(0).value()));
    }

    /** Whether it has digits enough for a slip with another figure for copper to be no chance. */
    boolean says() {
        return digits() > 1;
    }

    private boolean near(final double explained) {
        return Math.abs(explained - value()) <= TOO_NEAR * Math.abs(value())
                || Math.abs(explained - inFull()) <= TOO_NEAR * Math.abs(inFull());
    }

    private boolean isFigure() {
        return mark.reading() instanceof Reading.Read && !mark.ref().quantity().chosen();
    }

    private int digits() {
        return mark.reading() instanceof Reading.Read read ? read.significantDigits() : 0;
    }

    /** Within half a unit of the last digit, which is no more than a share of the figure. */
    private boolean lies(final double low, final double high, final double most) {
        if (!(mark.reading() instanceof Reading.Read read)) {
            return false;
        }
        final double half =
                Math.min(lastDigit(read) / 2, most * Math.abs(low)) + WINDOW * Math.abs(low);
        return read.value() >= low - half && read.value() <= high + half;
    }

    /** Noughts at the end of a whole number are rounded off: 200 Wh for 193, if nothing else is. */
    private double lastDigit(final Reading.Read read) {
        double digit = read.lastDigit();
        if (roundNumber()) {
            for (long left = Math.round(read.value() / digit); left % 10 == 0; left /= 10) {
                digit *= 10;
            }
        }
        return digit;
    }

    private boolean roundNumber() {
        return ROUND.matcher(mark.given()).find()
                && mark.explained().isEmpty()
                && !mark.danger().equals(Optional.of(Danger.FIRE));
    }
}
