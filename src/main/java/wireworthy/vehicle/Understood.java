package wireworthy.vehicle;

import java.util.List;
import java.util.stream.Collectors;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.working.Names;
import wireworthy.working.QuestionReader;
import wireworthy.working.Unworkable;

/** What a typed entry was understood to be. */
public sealed interface Understood {
    /** For people: what it was understood as, or why it wasn't; empty for nothing typed. */
    String text();

    /** Nothing is typed there. */
    record Nothing() implements Understood {
        @Override
        public String text() {
            return "";
        }
    }

    /**
     * A figure.
     *
     * @param quantity as worked with: a drop limit in per cent is a share
     */
    record Figure(Quantity quantity, Reading.Read read) implements Understood {
        @Override
        public String text() {
            return read.text();
        }
    }

    /** One of a closed list of names. */
    record Name(String text) implements Understood {}

    /**
     * Sections that can be bought.
     *
     * @param each as typed, one by one
     */
    record Sections(List<String> each, String text) implements Understood {}

    /**
     * It can't be read.
     *
     * @param text why, and what to write instead
     */
    record Trouble(String text) implements Understood {}

    /** Understands an entry; never throws. */
    static Understood of(final Quantity quantity, final String typed) {
        if (typed.isBlank()) {
            return new Nothing();
        }
        try {
            if (quantity == Quantity.AVAILABLE_SECTIONS) {
                return sections(SectionList.parts(typed));
            }
            return quantity.numeric()
                    ? figure(worked(quantity, typed), typed)
                    : new Name(Names.of(quantity, "", typed));
        } catch (final Unworkable why) {
            return new Trouble(why.what());
        }
    }

    /** Understands an own figure, in the unit of its quantity where none was typed. */
    static Understood own(final Quantity quantity, final String typed) {
        if (typed.isBlank()) {
            return new Nothing();
        }
        final Reading reading = Figures.read(typed, quantity.dimension(), false);
        if (reading instanceof Reading.Read read) {
            return new Figure(quantity, read);
        }
        return new Trouble(
                reading instanceof Reading.Unclear unclear
                        ? unclear.question()
                        : ((Reading.Unreadable) reading).message());
    }

    private static Understood figure(final Quantity quantity, final String typed) {
        return new Figure(quantity, QuestionReader.figure("", quantity, typed));
    }

    private static Understood sections(final List<String> parts) {
        return new Sections(
                parts,
                parts.stream()
                        .map(part -> QuestionReader.figure("", Quantity.SECTION, part).text())
                        .collect(Collectors.joining(", ")));
    }

    private static Quantity worked(final Quantity quantity, final String typed) {
        return quantity == Quantity.DROP_LIMIT ? QuestionReader.limit(typed) : quantity;
    }
}
