package wireworthy.window.check;

/**
 * What is said of a file.
 *
 * @param text empty where there is nothing to say yet
 * @param trouble whether it is to be seen to
 */
record Said(String text, boolean trouble) {
    static final Said NOTHING = new Said("", false);
}
