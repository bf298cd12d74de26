package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.marking.Mark;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.working.Names;

/**
 * One entry of a form, without a control: what is typed there and what there is to say of it.
 *
 * @param where its path within the spot, such as {@code given.section}
 * @param key of its label among the texts
 * @param quantity what it is read as; empty for free text
 * @param subject the name of the load it speaks of; empty where it speaks of the spot
 */
record Entry(
        VehicleModel model,
        Spot spot,
        String where,
        String key,
        Optional<Quantity> quantity,
        Lens<String> lens,
        Optional<Lens<String>> subject) {
    /**
     * What is known of it now; all that is said of it hangs on this.
     *
     * @param subject the name of the load it speaks of
     * @param fitting a fuse that fits, where one is asked for
     */
    record Known(
            String text,
            Optional<String> subject,
            Optional<FieldNote> note,
            Optional<String> fitting) {}

    /** Its path within the vehicle; the id of its field, too. */
    String path() {
        return spot.path() + where;
    }

    Known known() {
        return new Known(text(), named(), note(), fitting());
    }

    /** What stands over the field. */
    String label() {
        return CheckTexts.of("label." + key);
    }

    /** The label for those who don't see what it stands by. */
    String spoken() {
        if (isOwn()) {
            return CheckTexts.of(
                    "own.read", "quantity", quantity.map(Quantity::words).orElse(label()));
        }
        return named().filter(name -> !name.isBlank())
                .map(name -> label() + ", " + name)
                .orElseGet(this::label);
    }

    private Optional<String> named() {
        return subject.map(it -> it.read().apply(model.now()));
    }

    /** An example, or what is taken where nothing is typed. */
    String prompt() {
        return fitting()
                .map(fuse -> CheckTexts.of("prompt.fitting", "fuse", fuse))
                .orElseGet(() -> CheckTexts.of("prompt." + key));
    }

    /** The smallest fuse that fits, where a fuse is asked for: no other stands as an example. */
    private Optional<String> fitting() {
        return quantity.filter(it -> it == Quantity.FUSE || it == Quantity.MAIN_FUSE)
                .filter(any -> !isOwn())
                .flatMap(any -> model.checking().fuse(spot))
                .flatMap(window -> window.between().stream().findFirst())
                .map(amps -> FigureText.of(amps, Dimension.CURRENT));
    }

    /** What is typed. */
    String text() {
        return spot.isIn(model.now()) ? lens.read().apply(model.now()) : "";
    }

    /** Types something else; nothing happens where that stands there already. */
    void type(final String text) {
        final String kept = kept(text);
        if (!text().equals(kept)) {
            model.change(this, vehicle -> lens.with().apply(vehicle, kept));
        }
    }

    /** What a text is kept as: with the unit that was left out; an own figure as it is. */
    String kept(final String text) {
        return quantity.filter(it -> !isOwn())
                .map(it -> BareFigure.completed(it, text, model.sizes()))
                .orElse(text);
    }

    private boolean isOwn() {
        return where.startsWith(EntryList.OWN);
    }

    /** Whether something is typed that can't be read or can't be so. */
    boolean troubled() {
        return note().filter(it -> it.kind() != FieldNote.Kind.MISSING).isPresent()
                || understood() instanceof Understood.Trouble;
    }

    /** What it was understood as, or what is the matter; empty where there is nothing to say. */
    String under() {
        final Understood understood = understood();
        if (understood instanceof Understood.Trouble) {
            return understood.text();
        }
        return note().map(FieldNote::text).orElseGet(() -> readAs(understood));
    }

    private static String readAs(final Understood understood) {
        return understood instanceof Understood.Figure || understood instanceof Understood.Sections
                ? CheckTexts.of("read-as", "figure", understood.text())
                : "";
    }

    private Understood understood() {
        return quantity.map(it -> isOwn() ? Understood.own(it, text()) : Understood.of(it, text()))
                .orElseGet(Understood.Nothing::new);
    }

    private Optional<FieldNote> note() {
        return model.checking().notes(spot).stream()
                .filter(it -> it.where().equals(where))
                .findFirst();
    }

    /** The names it can hold; none where it is typed. */
    List<String> names() {
        return quantity.map(Names::known).orElse(List.of());
    }

    /** One of these names in words. */
    String words(final String name) {
        return quantity.equals(Optional.of(Quantity.FUSE_SERIES)) && names().contains(name)
                ? FuseSeriesTable.named(name).words()
                : name;
    }

    /** The mark of it as an own figure; empty where there is none or it can't be marked. */
    Optional<Mark> mark() {
        return model.checking().marks(spot).stream()
                .filter(mark -> quantity.equals(Optional.of(mark.ref().quantity())))
                .findFirst();
    }
}
