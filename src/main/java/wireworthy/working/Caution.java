package wireworthy.working;

/**
 * Something in the numbers that could hurt someone.
 *
 * @param id stable name
 * @param danger how bad
 * @param text for people
 */
public record Caution(String id, Danger danger, String text) {}
