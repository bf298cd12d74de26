package wireworthy.rules;

/**
 * Works out the text of a sum: numbers, × ÷ + −, parentheses, √, ², π and ln. Written apart from
 * the engine, which never reads its own texts.
 */
final class Sum {
    private final String text;
    private int at;

    private Sum(final String text) {
        this.text = text.replace(" ", "");
    }

    /** The value of a text; refuses what is no sum to the last sign. */
    static double of(final String text) {
        final Sum sum = new Sum(text);
        final double value = sum.sum();
        if (sum.at < sum.text.length()) {
            throw new IllegalArgumentException(
                    "no sum from \"" + sum.text.substring(sum.at) + "\" on: " + text);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (takes("+")) {
                value += product();
            } else if (takes("−")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (takes("×")) {
                value *= power();
            } else if (takes("÷")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        final double base = single();
        return takes("²") ? base * base : base;
    }

    private double single() {
        if (takes("√")) {
            return Math.sqrt(single());
        }
        if (takes("ln")) {
            return Math.log(single());
        }
        if (takes("π")) {
            return Math.PI;
        }
        if (takes("(")) {
            final double value = sum();
            if (!takes(")")) {
                throw new IllegalArgumentException("no closing parenthesis: " + text);
            }
            return value;
        }
        return number();
    }

    private double number() {
        final int from = at;
        while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        if (from == at) {
            throw new IllegalArgumentException("no number at " + from + ": " + text);
        }
        return Double.parseDouble(text.substring(from, at));
    }

    private boolean takes(final String sign) {
        final boolean here = text.startsWith(sign, at);
        at += here ? sign.length() : 0;
        return here;
    }
}
