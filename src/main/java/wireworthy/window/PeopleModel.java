package wireworthy.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
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

    /** Keeps answers for someone else from now on. */
    void use(final String code) {
        act(
                () -> {
                    turnTo(code);
                    return PeopleTexts.of("used", "person", code);
                });
    }

    /** Puts someone new on the list and keeps answers for them. */
    void add(final String code) {
        act(
                () -> {
                    final String name = code.strip();
                    people().add(name);
                    turnTo(name);
                    return PeopleTexts.of("added", "person", name);
                });
    }

    /** Gives the one in use another code name. */
    void rename(final String to) {
        act(
                () -> {
                    final String from = now();
                    final String name = to.strip();
                    people().rename(from, name);
                    turnTo(name);
                    return PeopleTexts.of("renamed", "from", from, "to", name);
                });
    }

    /** Deletes the one in use; answers are kept for another one then, or under a new name. */
    void delete() {
        act(
                () -> {
                    final String gone = now();
                    people().delete(gone, record.now());
                    turnTo(record.people().codes().stream().findFirst().orElseGet(this::free));
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
        act(
                () -> {
                    people().undelete(code);
                    turnTo(code);
                    return PeopleTexts.of("restored", "person", code);
                });
    }

    /** Puts all answers of another one to the one in use. */
    void join(final String from) {
        act(
                () -> {
                    people().join(from, now());
                    turnTo(now());
                    return PeopleTexts.of("joined", "from", from, "person", now());
                });
    }

    void exportJson(final Path file) {
        act(
                () -> {
                    people().exportJson(now(), file);
                    return PeopleTexts.of("exported", "file", file);
                });
    }

    void exportCsv(final Path file) {
        act(
                () -> {
                    people().exportCsv(now(), file);
                    return PeopleTexts.of("exported", "file", file);
                });
    }

    /** Takes in a record and keeps answers for the one whose it is. */
    void importJson(final Path file) {
        act(
                () -> {
                    final People.Imported taken = record.people().importJson(file);
                    turnTo(taken.code());
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

    private void turnTo(final String code) {
        record.turnTo(code);
        settings.change(it -> it.withPerson(code));
        turned.run();
    }

    private void act(final Supplier<String> action) {
        String outcome;
        try {
            outcome = action.get();
        } catch (final RecordProblem problem) {
            outcome = OwnRecord.words(problem);
        }
        said.set(outcome);
    }
}
