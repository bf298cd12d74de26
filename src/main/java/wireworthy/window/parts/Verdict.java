package wireworthy.window.parts;

/** How something stands: each with a sign, so that colour never says it alone. */
public enum Verdict {
    SOUND(Styles.SOUND, Icon.TICK),
    UNSOUND(Styles.UNSOUND, Icon.CROSS),
    CAUTION(Styles.CAUTION, Icon.CAUTION);

    private final String style;
    private final Icon icon;

    Verdict(final String style, final Icon icon) {
        this.style = style;
        this.icon = icon;
    }

    /** The style class that brings the colours. */
    public String style() {
        return style;
    }

    /** The sign beside the words. */
    public Icon icon() {
        return icon;
    }
}
