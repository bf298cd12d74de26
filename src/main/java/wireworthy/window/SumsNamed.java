package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wireworthy.facts.CableTables;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/** The table, limit and margin that a working or a live figure goes by, in words. */
public final class SumsNamed {
    private static final Set<Quantity> FROM_A_TABLE =
            Set.of(
                    Quantity.TABLE_AMPACITY,
                    Quantity.SECTION_FOR_AMPACITY,
                    Quantity.STANDARD_SECTION);

    private SumsNamed() {}

    /** Those a working takes, given or assumed. */
    static List<String> of(final Worked worked) {
        final Optional<String> table =
                fromATable(worked)
                        ? Optional.of(SumsTexts.table(worked.plan().setting().table()))
                        : Optional.empty();
        return Stream.of(table, limit(worked), margin(worked)).flatMap(Optional::stream).toList();
    }

    private static boolean fromATable(final Worked worked) {
        return worked.plan().steps().stream()
                .map(step -> step.direction().output())
                .anyMatch(ref -> FROM_A_TABLE.contains(ref.quantity()));
    }

    private static Optional<String> limit(final Worked worked) {
        return text(worked, Quantity.DROP_LIMIT_SHARE)
                .or(() -> text(worked, Quantity.DROP_LIMIT))
                .map(SumsTexts::limit);
    }

    private static Optional<String> margin(final Worked worked) {
        return text(worked, Quantity.MARGIN).map(SumsTexts::margin);
    }

    private static Optional<String> text(final Worked worked, final Quantity quantity) {
        return worked.plan()
                .placeOf(Ref.circuit(quantity))
                .map(place -> FigureText.of(worked.values()[place], quantity.dimension()));
    }

    /** Those a live figure stands by; a handle that moves says itself where it stands. */
    public static List<String> of(final Figure figure) {
        return Stream.of(FigureOption.CABLE_TABLE, FigureOption.DROP_LIMIT, FigureOption.MARGIN)
                .filter(figure.handles()::containsKey)
                .flatMap(option -> text(figure.handle(option)).stream())
                .toList();
    }

    private static Optional<String> text(final Handle handle) {
        if (handle instanceof Handle.Named named) {
            return Optional.of(SumsTexts.table(CableTables.named(named.name())));
        }
        if (handle instanceof Handle.Fixed fixed) {
            final Dimension dimension = fixed.quantity().dimension();
            final String text = FigureText.of(fixed.value(), dimension);
            return Optional.of(
                    fixed.quantity() == Quantity.MARGIN
                            ? SumsTexts.margin(text)
                            : SumsTexts.limit(text));
        }
        return Optional.empty();
    }
}
