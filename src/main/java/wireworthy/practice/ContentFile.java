package wireworthy.practice;

/** A file of content, such as a bank or a lesson, from the program or from a folder. */
public sealed interface ContentFile {
    /** Name of the file, without its folder. */
    String name();

    /** A file that was read. */
    record Text(String name, String text) implements ContentFile {}

    /** A file or folder that could not be read. */
    record Unread(String name, String message, String remedy) implements ContentFile {}
}
