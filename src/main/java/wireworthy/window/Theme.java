package wireworthy.window;

/** The two sets of colours. */
public enum Theme {
    LIGHT("light.css"),
    DARK("dark.css");

    private final String sheet;

    Theme(final String sheet) {
        this.sheet = sheet;
    }

    /** The theme for the setting. */
    public static Theme of(final boolean dark) {
        return dark ? DARK : LIGHT;
    }

    /** File name of the style sheet that holds the colours. */
    public String sheet() {
        return sheet;
    }
}
