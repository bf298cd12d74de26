package wireworthy.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wireworthy.practice.Banks;
import wireworthy.practice.Chooser;
import wireworthy.practice.Moment;
import wireworthy.practice.Template;
import wireworthy.record.Answer;
import wireworthy.record.RecordFile;
import wireworthy.rules.Skill;

/**
 * How long a record of a million answers takes against an empty one: to open, to keep an answer, to
 * choose the next problem and to say where one stands. Give a folder; the records stay there. The
 * least of several times says most on a machine that does other things too; CPU time leaves out the
 * disk.
 */
public final class LongRecord {
    private static final int ANSWERS = 1_000_000;
    private static final int A_DAY = 274;
    private static final int TIMES = 21;
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
            fill(full);
            time("first opening, all folded", 1, () -> open(full));
        }
        for (final Path file : List.of(empty, full)) {
            System.out.println(file.getFileName());
            time("open and know where one stands", TIMES, () -> open(file));
            try (RecordFile record = RecordFile.open(file)) {
                work(record, templates);
            }
        }
    }

    private static void open(final Path file) {
        try (RecordFile record = RecordFile.open(file)) {
            record.standing("me");
            record.last("me", 400);
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
        time(
                "Where I stand: days, states, slips of a week",
                TIMES,
                () -> {
                    record.days("me");
                    record.since("me", END.minusSeconds(7 * 86_400));
                });
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

    /** Ten years of answers, written in one statement. */
    private static void fill(final Path file) throws SQLException {
        try (RecordFile record = RecordFile.open(file)) {
            record.people().add("me");
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(
                    String.format(
                            Locale.ROOT,
                            """
                            WITH RECURSIVE n (i) AS
                                (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < %d)
                            INSERT INTO answer (uid, at, day, person, bank, version, template, seed,
                                skill, difficulty, asked, typed, understood, sound, aided, slips,
                                suspected, seconds)
                            SELECT printf('%%012x-%%05x-0', %d + i * 315000, i %% 65536),
                                %d + i * 315000, %d + i / %d, 1, 'voltage-drop', 1,
                                'template' || i %% 300, i,
                                CASE i %% 5 WHEN 0 THEN 'drop' WHEN 1 THEN 'derating'
                                    WHEN 2 THEN 'fuse-floor' WHEN 3 THEN 'charging'
                                    ELSE 'adding-loads' END,
                                0, '', '0.5 V', '0.5 V', i %% 7 > 0, 0,
                                CASE WHEN i %% 7 = 0 THEN 'one-way-length' ELSE '' END, '', 20
                            FROM n
                            """,
                            ANSWERS - 1,
                            END.toEpochMilli() - ANSWERS * 315_000L,
                            END.toEpochMilli() - ANSWERS * 315_000L,
                            END.getEpochSecond() / 86_400 - ANSWERS / A_DAY,
                            A_DAY));
        }
    }
}
