package wireworthy.practice;

/**
 * How much steeper or flatter one learner's answers run than the log-odds of the formula say: the
 * chance told is that of the log-odds times this slope. It begins at 1 and follows the learner's
 * own answers, so nothing has to be fitted beforehand.
 *
 * <p>A calibration by one factor (Platt 1999), followed answer by answer as a normal belief
 * (Spiegelhalter and Lauritzen 1990); what is not known of it yet draws the chance towards a half
 * (MacKay 1992). All from memory, unconfirmed.
 *
 * @param mean of the belief
 * @param variance of the belief
 */
public record Slope(double mean, double variance) {
    /** Before the first answer: 1, give or take a fifth. */
    static final Slope UNKNOWN = new Slope(1, 0.15 * 0.15);

    /** Of any log-odds, averaged over what the slope may be. */
    double chance(final double logOdds) {
        final double spread = variance * logOdds * logOdds;
        return sigmoid(mean * logOdds / Math.sqrt(1 + Math.PI / 8 * spread));
    }

    /** After an answer whose log-odds were these by the formula. */
    Slope with(final double logOdds, final boolean right) {
        final double chance = sigmoid(mean * logOdds);
        final double told = chance * (1 - chance) * logOdds * logOdds;
        final double left = variance / (1 + variance * told);
        return new Slope(mean + left * logOdds * ((right ? 1 : 0) - chance), left);
    }

    /** The chance of log-odds. */
    static double sigmoid(final double logOdds) {
        return 1 / (1 + Math.exp(-logOdds));
    }
}
