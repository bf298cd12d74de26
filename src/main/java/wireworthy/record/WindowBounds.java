package wireworthy.record;

/** Where a window stands on the screens of a machine, in screen pixels before scaling. */
public record WindowBounds(double x, double y, double width, double height) {}
