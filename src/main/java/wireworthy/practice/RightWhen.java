package wireworthy.practice;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wireworthy.rules.Quantity;
import wireworthy.working.Worked;

/** When an option is the right one. */
public sealed interface RightWhen {
    /** What has to be worked to tell. */
    List<Quantity> quantities();

    /** Whether it is right with these numbers. */
    boolean holds(Worked worked);

    /** Whatever the numbers are. */
    record Always(boolean right) implements RightWhen {
        @Override
        public List<Quantity> quantities() {
            return List.of();
        }

        @Override
        public boolean holds(final Worked worked) {
            return right;
        }
    }

    /**
     * By two worked quantities.
     *
     * @param sign one of {@code > < >= <=}
     */
    record Compared(Quantity one, String sign, Quantity other) implements RightWhen {
        private static final Pattern FORM =
                Pattern.compile("([a-z0-9-]+) *(>=|<=|>|<) *([a-z0-9-]+)");

        /**
         * Read from {@code "section-for-drop > section-for-ampacity"}; empty where it is not so.
         */
        static Optional<Compared> of(final String text) {
            final Matcher matcher = FORM.matcher(text.strip());
            if (!matcher.matches()) {
                return Optional.empty();
            }
            return Quantity.of(matcher.group(1))
                    .flatMap(
                            one ->
                                    Quantity.of(matcher.group(3))
                                            .map(two -> new Compared(one, matcher.group(2), two)));
        }

        @Override
        public List<Quantity> quantities() {
            return List.of(one, other);
        }

        @Override
        public boolean holds(final Worked worked) {
            final double a = worked.value(one).orElse(Double.NaN);
            final double b = worked.value(other).orElse(Double.NaN);
            return switch (sign) {
                case ">" -> a > b;
                case "<" -> a < b;
                case ">=" -> a >= b;
                default -> a <= b;
            };
        }
    }
}
