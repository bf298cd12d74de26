package wireworthy.evening.course;

import org.commonmark.node.Node;
import wireworthy.evening.wish.Wish;

/**
 * An evening to start from.
 *
 * @param file its name
 * @param wish the sheet it prints, the rest as usual
 * @param plan what to show, ask and watch for: Markdown whose links lead to {@code lesson:id}
 */
public record Evening(String file, String title, Wish wish, Node plan) {}
