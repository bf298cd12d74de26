package wireworthy.window.evening;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.course.Evening;
import wireworthy.evening.course.Evenings;
import wireworthy.evening.print.SheetPages;
import wireworthy.evening.summary.NextWeek;
import wireworthy.evening.wish.Made;
import wireworthy.evening.wish.Wish;
import wireworthy.evening.wish.WishFile;
import wireworthy.paper.PageCount;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** The sheet that is being chosen, and what comes of it, without a control. */
final class MakeModel {
    private record Begun(Wish wish, Evenings evenings, boolean ownBanks) {}

    private final EveningDesk desk;
    private final Background background;
    private final Path file;
    private final AtomicLong asked = new AtomicLong();
    private final ReadOnlyObjectWrapper<Optional<Wish>> replaced =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Made>> made =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<OptionalInt> pages =
            new ReadOnlyObjectWrapper<>(OptionalInt.empty());
    private final ReadOnlyBooleanWrapper held = new ReadOnlyBooleanWrapper();
    private final ComesFrom comesFrom = new ComesFrom();
    private Wish wish = Wish.USUAL;
    private Wish shown = Wish.USUAL;
    private Evenings evenings = new Evenings(List.of(), List.of());
    private boolean ownBanks;

    MakeModel(final EveningDesk desk, final Background background) {
        this.desk = desk;
        this.background = background;
        file = desk.folder().sheets().resolve("choice.json");
    }

    /** Reads what was chosen last, the banks and the evenings. */
    void begin() {
        background.run(this::read, this::begun);
    }

    private Begun read() {
        return new Begun(WishFile.read(file), desk.evenings(), desk.shelf().hasOwn());
    }

    private void begun(final Begun read) {
        evenings = read.evenings();
        ownBanks = read.ownBanks();
        replace(read.wish());
    }

    /** The evenings to start from. */
    Evenings evenings() {
        return evenings;
    }

    /** Whether the leader has banks of their own. */
    boolean hasOwnBanks() {
        return ownBanks;
    }

    /** Where the sheet comes from. */
    ComesFrom comesFrom() {
        return comesFrom;
    }

    /** What the sheet is chosen for. */
    ChosenFor chosenFor() {
        return comesFrom.chosenFor().get();
    }

    /** What is wanted now. */
    Wish wish() {
        return wish;
    }

    /** Wants something else. */
    void change(final UnaryOperator<Wish> how) {
        final Wish other = how.apply(wish);
        if (!other.wanted().equals(wish.wanted())) {
            comesFrom.chosenAnew();
        }
        wish = other;
        work();
    }

    /** Wants something else throughout: the form is to show it. */
    private void replace(final Wish other) {
        wish = other;
        replaced.set(Optional.of(other));
        work();
    }

    /**
     * Forgets the code names, and the sheets made or opened here that hold them.
     *
     * @param done told whether it could be done
     */
    void forgetNames(final Consumer<Boolean> done) {
        change(it -> it.withWho(it.who().withNames("").withNamed(false)));
        final Wish now = wish;
        background.run(() -> forgotten(now), done);
    }

    private boolean forgotten(final Wish now) {
        try {
            WishFile.write(file, now);
            desk.begun().forgetSheets();
            return true;
        } catch (final IOException e) {
            return false;
        }
    }

    /** The same choice with other problems and numbers. */
    void others() {
        final int seed = ThreadLocalRandom.current().nextInt(SheetPlan.SEEDS);
        change(it -> it.withSeed(seed));
    }

    /** Leaves out the skills that have nothing that fits. */
    void leaveOut() {
        final List<Skill> without = made.get().map(Made::without).orElse(List.of());
        final var left =
                wish.wanted().skills().stream().filter(it -> !without.contains(it)).toList();
        replace(wish.withWanted(wish.wanted().withSkills(Set.copyOf(left))));
    }

    /** Starts from an evening; names and paper stay as they are. */
    void use(final Optional<Evening> other) {
        comesFrom.evening(other);
        other.ifPresent(
                it ->
                        replace(
                                it.wish()
                                        .withHandout(wish.handout())
                                        .withWho(
                                                it.wish()
                                                        .who()
                                                        .withNames(wish.who().names())
                                                        .withNamed(wish.who().named()))));
    }

    /** Shows the sheet of a mark again. */
    void openMark(final String mark) {
        background.run(() -> marked(mark), Runnable::run);
    }

    /** Shows the sheet for next week, after what is still being read. */
    void show(final NextWeek next) {
        background.run(() -> next, it -> show(it.plan(), it.chosenFor()));
    }

    private void show(final SheetPlan plan, final ChosenFor reason) {
        comesFrom.elsewhere(reason);
        replace(wish.like(plan));
    }

    private Runnable marked(final String mark) {
        try {
            final SheetPlan plan = Sheet.marked(mark, desk.shelf()).plan();
            return () -> show(plan, ChosenFor.NOTHING);
        } catch (final EveningProblem e) {
            return () -> comesFrom.noMark(e.text());
        }
    }

    private void work() {
        final long number = asked.incrementAndGet();
        final Wish now = wish;
        pages.set(OptionalInt.empty());
        background.run(() -> made(number, now), it -> it.ifPresent(all -> show(number, all)));
    }

    private record Outcome(Made made, boolean held) {}

    private Optional<Outcome> made(final long number, final Wish now) {
        if (number != asked.get()) {
            return Optional.empty();
        }
        final Made all = Made.of(now, desk.shelf());
        return Optional.of(new Outcome(all, held(all.sheet())));
    }

    private boolean held(final Optional<Sheet> sheet) {
        return sheet.filter(desk::answering).isPresent();
    }

    /** Looks again whether the sheet is being answered on this machine. */
    void look() {
        final Optional<Sheet> now = sheet();
        background.run(() -> held(now), held::set);
    }

    /** The one who asks leads the class: nothing of this sheet is kept back from now on. */
    void lead() {
        sheet().ifPresent(desk::lead);
        held.set(false);
    }

    private void show(final long number, final Outcome outcome) {
        if (number == asked.get()) {
            final Wish counted = wish;
            final Made now = outcome.made();
            held.set(outcome.held());
            shown = counted;
            made.set(Optional.of(now));
            final ChosenFor reason = chosenFor();
            background.run(() -> pagesOf(number, counted, now, reason), it -> count(number, it));
        }
    }

    /** Also keeps the choice, as there is time now. */
    private OptionalInt pagesOf(
            final long number, final Wish now, final Made all, final ChosenFor reason) {
        if (number != asked.get()) {
            return OptionalInt.empty();
        }
        keep(now);
        return all.sheet()
                .map(sheet -> onPaper(sheet, now, reason))
                .map(one -> OptionalInt.of(PageCount.of(one.sheets())))
                .orElse(OptionalInt.empty());
    }

    private static SheetPages onPaper(final Sheet sheet, final Wish now, final ChosenFor reason) {
        return new SheetPages(sheet, CodeNames.numbers(1), now.handout().paper(), reason);
    }

    private void count(final long number, final OptionalInt counted) {
        if (number == asked.get()) {
            pages.set(counted);
        }
    }

    private void keep(final Wish now) {
        try {
            WishFile.write(file, now);
        } catch (final IOException e) {
            // It has to be chosen anew next time; nothing else is lost by it.
        }
    }

    /** The sheet, where it can be made. */
    Optional<Sheet> sheet() {
        return made.get().flatMap(Made::sheet);
    }

    /** What that sheet was made from. */
    Wish shown() {
        return shown;
    }

    /** What is wanted, whenever the form has to show it anew; empty until it is known. */
    ReadOnlyObjectProperty<Optional<Wish>> replaced() {
        return replaced.getReadOnlyProperty();
    }

    /** What comes of it; for a moment it may be what came of the choice before. */
    ReadOnlyObjectProperty<Optional<Made>> made() {
        return made.getReadOnlyProperty();
    }

    /** How many pages the first copy has, once they are counted. */
    ReadOnlyObjectProperty<OptionalInt> pages() {
        return pages.getReadOnlyProperty();
    }

    /** Whether problems and key are kept back: the sheet is being answered on this machine. */
    ReadOnlyBooleanProperty held() {
        return held.getReadOnlyProperty();
    }
}
