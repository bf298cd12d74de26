package wireworthy.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.record.People;
import wireworthy.record.RecordProblem;
import wireworthy.record.Settings;
import wireworthy.record.SettingsKeeper;

/** What the page of the people shows and does, without a control. */
final class PeopleModel {
    private final OwnRecord record;
    private final SettingsKeeper settings;
    private final Runnable turned;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private Background background = Background.atOnce();

    /**
     * @param settings keep the code name in use
     * @param turned told when someone else learns from now on, or has other answers on record
     */
    PeopleModel(final OwnRecord record, final SettingsKeeper settings, final Runnable turned) {
        this.record = record;
        this.settings = settings;
        this.turned = turned;
    }

    /** The code name for which answers are kept. */
    String now() {
        return record.person();
    }

    /** All code names, the one in use among them even where it has no answer yet. */
    List<String> codes() {
        final List<String> codes = new ArrayList<>(record.people().codes());
        if (!codes.contains(now())) {
            codes.add(0, now());
        }
        return codes;
    }

    /** All but the one in use. */
    List<String> others() {
        return codes().stream().filter(code -> !code.equals(now())).toList();
    }

    /** Who can still be brought back. */
    List<String> deleted() {
        return record.people().deleted();
    }

    /** What was done last, or why it could not be done. */
    ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }

    /** Whether something is being done; meanwhile nothing else is begun. */
    ReadOnlyBooleanProperty busy() {
        return busy.getReadOnlyProperty();
    }

    /** Does from now on away from the window what reads or writes the record. */
    void by(final Background other) {
        background = other;
    }

    /** Keeps answers for someone else from now on. */
    void use(final String code) {
        turn(
                () -> {
                    record.turnTo(code);
                    return PeopleTexts.of("used", "person", code);
                });
    }

    /** Puts someone new on the list and keeps answers for them. */
    void add(final String code) {
        turn(
                () -> {
                    final String name = code.strip();
                    people().add(name);
                    record.turnTo(name);
                    return PeopleTexts.of("added", "person", name);
                });
    }

    /** Gives the one in use another code name. */
    void rename(final String to) {
        turn(
                () -> {
                    final String from = now();
                    final String name = to.strip();
                    people().rename(from, name);
                    record.turnTo(name);
                    return PeopleTexts.of("renamed", "from", from, "to", name);
                });
    }

    /** Deletes the one in use; answers are kept for another one then, or under a new name. */
    void delete() {
        turn(
                () -> {
                    final String gone = now();
                    people().delete(gone, record.now());
                    record.turnTo(
                            record.people().codes().stream().findFirst().orElseGet(this::free));
                    return PeopleTexts.of("is-deleted", "person", gone);
                });
    }

    private String free() {
        final String usual = Settings.DEFAULTS.person();
        String name = usual;
        for (int number = 2; deleted().contains(name); number++) {
            name = usual + " " + number;
        }
        return name;
    }

    /** Undoes a deletion and keeps answers for the one brought back. */
    void undelete(final String code) {
        turn(
                () -> {
                    people().undelete(code);
                    record.turnTo(code);
                    return PeopleTexts.of("restored", "person", code);
                });
    }

    /** Puts all answers of another one to the one in use. */
    void join(final String from) {
        turn(
                () -> {
                    people().join(from, now());
                    record.turnTo(now());
                    return PeopleTexts.of("joined", "from", from, "person", now());
                });
    }

    void exportJson(final Path file) {
        work(
                () -> {
                    people().exportJson(now(), file);
                    return PeopleTexts.of("exported", "file", file);
                },
                () -> {});
    }

    void exportCsv(final Path file) {
        work(
                () -> {
                    people().exportCsv(now(), file);
                    return PeopleTexts.of("exported", "file", file);
                },
                () -> {});
    }

    /** Takes in a record and keeps answers for the one whose it is. */
    void importJson(final Path file) {
        turn(
                () -> {
                    final People.Imported taken = record.people().importJson(file);
                    record.turnTo(taken.code());
                    return PeopleTexts.of(
                            "imported",
                            "person",
                            taken.code(),
                            "added",
                            taken.added(),
                            "already",
                            taken.already());
                });
    }

    /** The people, the one in use on record among them. */
    private People people() {
        final People people = record.people();
        if (!people.codes().contains(now()) && !people.deleted().contains(now())) {
            people.add(now());
        }
        return people;
    }

    /** Does what changes who learns here, or what is on record of them. */
    private void turn(final Supplier<String> action) {
        work(
                action,
                () -> {
                    settings.change(it -> it.withPerson(now()));
                    turned.run();
                });
    }

    /**
     * What came of an action.
     *
     * @param words for the person
     * @param done whether it was done
     */
    private record Outcome(String words, boolean done) {
        static Outcome of(final Supplier<String> action) {
            try {
                return new Outcome(action.get(), true);
            } catch (final RecordProblem problem) {
                return new Outcome(OwnRecord.words(problem), false);
            }
        }
    }

    private void work(final Supplier<String> action, final Runnable then) {
        if (busy.get()) {
            return;
        }
        said.set(PeopleTexts.of("at-work"));
        busy.set(true);
        background.run(
                () -> Outcome.of(action),
                outcome -> {
                    if (outcome.done()) {
                        then.run();
                    }
                    said.set(outcome.words());
                    busy.set(false);
                });
    }
}
