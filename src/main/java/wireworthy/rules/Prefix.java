package wireworthy.rules;

/** The SI prefixes that occur in vehicle wiring. */
enum Prefix {
    NONE("", "", "", 0),
    PICO("p", "p", "pico", -12),
    NANO("n", "n", "nano", -9),
    MICRO("u", "µ", "micro", -6),
    MILLI("m", "m", "milli", -3),
    CENTI("c", "c", "centi", -2),
    KILO("k", "k", "kilo", 3),
    MEGA("M", "M", "mega", 6);

    final String letter;
    final String shown;
    final String word;
    final int power;

    Prefix(final String letter, final String shown, final String word, final int power) {
        this.letter = letter;
        this.shown = shown;
        this.word = word;
        this.power = power;
    }

    /** Typed in the wrong case nobody means these: "NA", "PA". */
    boolean isExact() {
        return this == PICO || this == NANO;
    }

    Unit of(final Unit unit) {
        return this == NONE
                ? unit
                : Unit.of(
                        letter + unit.word(),
                        shown + unit.shown(),
                        word + unit.name(),
                        unit.factor().scaleByPowerOfTen(power));
    }
}
