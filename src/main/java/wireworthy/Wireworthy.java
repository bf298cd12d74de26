package wireworthy;

/** Starts the program. */
public final class Wireworthy {
    private Wireworthy() {}

    public static void main(final String[] arguments) {
        System.out.println("Wireworthy");
    }
}
