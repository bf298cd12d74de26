package wireworthy.evening.called;

/**
 * An answer that was called out.
 *
 * @param text as it was understood: "0.526 V", "C"
 */
public record Called(String text, Origin origin) {}
