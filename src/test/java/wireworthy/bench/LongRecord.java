package wireworthy.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import wireworthy.practice.Banks;
import wireworthy.practice.Chooser;
import wireworthy.practice.Moment;
import wireworthy.practice.Template;
import wireworthy.record.Answer;
import wireworthy.record.RecordFile;
import wireworthy.rules.Skill;
import wireworthy.window.stand.Stand;
import wireworthy.window.stand.StandTexts;

/**
 * How long a record of a million answers of one learner, spread over all skills and templates, and
 * of a fifth as many of another takes against an empty one: to open, to keep an answer, to choose
 * the next problem and to say where one stands. Give a folder; the records stay there. The least of
 * several times says most on a machine that does other things too; CPU time leaves out the disk.
 */
public final class LongRecord {
    private static final int ANSWERS = 1_000_000;
    private static final long EACH = 315_000;
    private static final List<String> PEOPLE = List.of("me", "you");
    private static final List<String> SLIPS =
            List.of(
                    "one-way-length",
                    "power-of-ten",
                    "margin-left-out",
                    "multiplied-power",
                    "one-way-length+power-of-ten",
                    "diameter-as-radius power-of-ten");
    private static final String ROW =
            "INSERT INTO answer (uid, at, day, person, bank, version, template, seed, skill,"
                    + " difficulty, asked, typed, understood, sound, aided, slips, suspected,"
                    + " seconds) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, '', ?, ?, ?, ?, ?, '', ?)";
    private static final int TIMES = 21;
    private static final int LATELY = 400;
    private static final Instant END = Instant.parse("2026-03-04T19:30:00Z");

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private LongRecord() {}

    /** Work to be timed. */
    private interface Work {
        void run();
    }

    public static void main(final String[] arguments) throws IOException, SQLException {
        final Path folder = Files.createDirectories(Path.of(arguments[0]));
        final List<Template> templates = Banks.read(List.of()).templates();
        final Path empty = folder.resolve("empty.sqlite");
        final Path full = folder.resolve("million.sqlite");
        if (!Files.exists(full)) {
            fill(full, templates);
            time("first opening, all folded", 1, () -> open(full, "me"));
            time("the other one's, all folded", 1, () -> open(full, "you"));
        }
        for (final Path file : List.of(empty, full)) {
            System.out.println(file.getFileName());
            for (final String person : PEOPLE) {
                time("open and know where stands " + person, TIMES, () -> open(file, person));
            }
            try (RecordFile record = RecordFile.open(file)) {
                work(record, templates);
            }
        }
    }

    private static void open(final Path file, final String person) {
        try (RecordFile record = RecordFile.open(file)) {
            record.standing(person);
            record.last(person, LATELY);
        }
    }

    private static void work(final RecordFile record, final List<Template> templates) {
        final long[] seed = {1};
        time("keep an answer", TIMES, () -> keep(record, seed[0]++));
        time("where one stands after it", TIMES, () -> record.standing("me"));
        time(
                "keep, stand and choose the next",
                TIMES,
                () -> {
                    keep(record, seed[0]++);
                    Chooser.next(
                            templates,
                            record.standing("me"),
                            Moment.of(END, ZoneOffset.UTC),
                            seed[0]);
                });
        for (final String person : PEOPLE) {
            time("Where I stand, the whole page, " + person, TIMES, () -> page(record, person));
        }
        time("turn to the other and back", TIMES, () -> PEOPLE.forEach(it -> turn(record, it)));
        time("slips of a week", TIMES, () -> record.since("me", END.minusSeconds(7 * 86_400)));
    }

    private static void turn(final RecordFile record, final String person) {
        record.standing(person);
        record.last(person, LATELY);
        record.screensRead(person);
    }

    /** All that the page says: each skill with its sentences, the summary, the plot over time. */
    private static void page(final RecordFile record, final String person) {
        final Stand stand =
                Stand.of(
                        record.standing(person),
                        record.held(person),
                        record.last(person, LATELY),
                        END.getEpochSecond() / 86_400);
        int words = StandTexts.summary(stand).length() + StandTexts.held(stand).length();
        for (final Skill skill : Skill.values()) {
            words += StandTexts.of(stand.of(skill), stand.today()).size();
            words += StandTexts.standsOn(skill, stand).length();
        }
        if (words == 0) {
            throw new IllegalStateException("nothing is said of " + person);
        }
    }

    private static void keep(final RecordFile record, final long seed) {
        record.keep(
                new Answer(
                        END.plusSeconds(seed),
                        END.getEpochSecond() / 86_400,
                        "me",
                        "voltage-drop",
                        1,
                        "aisle-strips-drop",
                        ANSWERS + seed,
                        Skill.DROP,
                        0,
                        Optional.empty(),
                        "0.5 V",
                        "0.5 V",
                        Optional.of(true),
                        false,
                        List.of(),
                        List.of(),
                        20));
    }

    private static void time(final String what, final int times, final Work work) {
        final double[] millis = new double[times];
        final double[] cpu = new double[times];
        for (int i = 0; i < times; i++) {
            final long from = System.nanoTime();
            final long cpuFrom = THREADS.getCurrentThreadCpuTime();
            work.run();
            millis[i] = (System.nanoTime() - from) / 1e6;
            cpu[i] = (THREADS.getCurrentThreadCpuTime() - cpuFrom) / 1e6;
        }
        Arrays.sort(millis);
        Arrays.sort(cpu);
        System.out.printf(
                Locale.ROOT,
                "  %-46s least %8.2f, median %8.2f, worst %8.2f ms; CPU least %8.2f, median %8.2f%n",
                what,
                millis[0],
                millis[times / 2],
                millis[times - 1],
                cpu[0],
                cpu[times / 2]);
    }

    /** Ten years of answers of one learner, and a fifth as many of another in between. */
    private static void fill(final Path file, final List<Template> templates) throws SQLException {
        try (RecordFile record = RecordFile.open(file)) {
            PEOPLE.forEach(record.people()::add);
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                PreparedStatement row = connection.prepareStatement(ROW)) {
            connection.setAutoCommit(false);
            final SplittableRandom lots = new SplittableRandom(6);
            for (int i = 0; i < ANSWERS; i++) {
                put(row, i, 1, templates, lots);
                if (i % 5 == 0) {
                    put(row, i, 2, templates, lots);
                }
                if (i % 10_000 == 0) {
                    row.executeBatch();
                }
            }
            row.executeBatch();
            connection.commit();
        }
    }

    /** One in four is wrong, half of these by a known slip; one in eight is worked with help. */
    private static void put(
            final PreparedStatement row,
            final int number,
            final int person,
            final List<Template> templates,
            final SplittableRandom lots)
            throws SQLException {
        final long at = END.toEpochMilli() - (ANSWERS - number) * EACH;
        final Template template = templates.get(lots.nextInt(templates.size()));
        final boolean wrong = lots.nextInt(4) == 0;
        final Object[] values = {
            String.format(Locale.ROOT, "%012x-%05x-%d", at, number % 65_536, person),
            at,
            Math.floorDiv(at, 86_400_000L),
            person,
            template.bank(),
            template.version(),
            template.id(),
            number,
            template.skill().id(),
            template.difficulty(),
            wrong ? "0.25 V" : "0.5 V",
            wrong ? "0.25 V" : "0.5 V",
            wrong ? 0 : 1,
            lots.nextInt(8) == 0 ? 1 : 0,
            wrong && lots.nextBoolean() ? SLIPS.get(lots.nextInt(SLIPS.size())) : "",
            5 + lots.nextInt(90)
        };
        for (int i = 0; i < values.length; i++) {
            row.setObject(i + 1, values[i]);
        }
        row.addBatch();
    }
}
