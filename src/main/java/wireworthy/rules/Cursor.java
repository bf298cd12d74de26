package wireworthy.rules;

/** A place in a text, moved on by those who read it. */
final class Cursor {

    private final String text;
    private int at;

    Cursor(final String text, final int at) {
        this.text = text;
        this.at = at;
    }

    int at() {
        return at;
    }

    void moveTo(final int place) {
        at = place;
    }

    void skip(final int characters) {
        at += characters;
    }

    void skipSpace() {
        while (peek(0) == ' ') {
            at++;
        }
    }

    void skipDigits() {
        while (isDigit(0)) {
            at++;
        }
    }

    /** The character so far ahead, or behind if negative; NUL outside the text. */
    char peek(final int ahead) {
        final int place = at + ahead;
        return place >= 0 && place < text.length() ? text.charAt(place) : '\0';
    }

    /** Whether the character so far ahead is one of 0 to 9. */
    boolean isDigit(final int ahead) {
        return isDigit(peek(ahead));
    }

    /** Whether the character so far ahead is one of these. */
    boolean isOneOf(final String characters, final int ahead) {
        return characters.indexOf(peek(ahead)) >= 0;
    }

    String since(final int start) {
        return text.substring(start, at);
    }

    static boolean isDigit(final char c) {
        return c >= '0' && c <= '9';
    }
}
