package wireworthy.record;

/**
 * Where a window stands on the screens of a machine, in screen pixels before scaling.
 *
 * @param maximised whether it fills its screen; the rest is then where it stood before
 */
public record WindowBounds(double x, double y, double width, double height, boolean maximised) {
    public WindowBounds(final double x, final double y, final double width, final double height) {
        this(x, y, width, height, false);
    }

    public WindowBounds maximised(final boolean value) {
        return new WindowBounds(x, y, width, height, value);
    }
}
