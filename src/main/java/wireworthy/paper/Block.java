package wireworthy.paper;

import java.util.Locale;
import org.w3c.dom.Element;

/** A part of a page that takes further parts; text put into it is never read as markup. */
public final class Block {
    private final Element element;

    Block(final Element element) {
        this.element = element;
    }

    /** A new part inside this one. */
    public Block add(final String tag) {
        final Element child = element.getOwnerDocument().createElement(tag);
        element.appendChild(child);
        return new Block(child);
    }

    /**
     * A new part inside this one.
     *
     * @param look its class in the style sheet
     */
    public Block add(final String tag, final String look) {
        return add(tag).with("class", look);
    }

    /** Text, as it stands. */
    public Block text(final String words) {
        element.appendChild(element.getOwnerDocument().createTextNode(printable(words)));
        return this;
    }

    /** A part with text inside this one. */
    public Block say(final String tag, final String look, final String words) {
        add(tag, look).text(words);
        return this;
    }

    /** A part with text inside this one, in the usual look of its kind. */
    public Block say(final String tag, final String words) {
        add(tag).text(words);
        return this;
    }

    /** Words over a drawing, so many millimetres from its corner; nothing for no words. */
    void label(final double left, final double top, final String words) {
        if (!words.isEmpty()) {
            final String place = String.format(Locale.ROOT, "left: %smm; top: %smm", left, top);
            add("div").with("style", place).text(words);
        }
    }

    /** Sets an attribute. */
    Block with(final String name, final String value) {
        element.setAttribute(name, value);
        return this;
    }

    /** Signs that no page can show, such as a form feed, become spaces. */
    private static String printable(final String words) {
        return words.codePoints()
                .map(sign -> Character.isISOControl(sign) && sign != '\n' ? ' ' : sign)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
