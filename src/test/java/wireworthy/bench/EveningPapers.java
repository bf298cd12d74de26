package wireworthy.bench;

import java.lang.management.ManagementFactory;
import java.util.EnumSet;
import java.util.Locale;
import wireworthy.evening.CodeNames;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.print.SheetPages;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.rules.Skill;

/**
 * Makes the papers of 30 learners with 12 problems each, every learner with own numbers: copies,
 * key and slip finder. Says how many seconds it took from the start of the program, and how many of
 * them a processor was busy.
 */
public final class EveningPapers {
    private static final int LEARNERS = 30;
    private static final int PROBLEMS = 12;
    private static final double NANOS = 1e9;
    private static final double MILLIS = 1e3;

    private EveningPapers() {}

    public static void main(final String[] arguments) {
        final var bean =
                (com.sun.management.OperatingSystemMXBean)
                        ManagementFactory.getOperatingSystemMXBean();
        Pages.expect();
        final Pick pick = Pick.BySkills.of(EnumSet.allOf(Skill.class), PROBLEMS);
        final Sheet sheet =
                Sheet.of(new SheetPlan(pick, true, LEARNERS, false, 7), Shelf.builtIn());
        say("banks read", bean.getProcessCpuTime());
        final SheetPages pages = new SheetPages(sheet, CodeNames.numbers(LEARNERS), PaperSize.A4);
        say("numbers drawn", bean.getProcessCpuTime());
        final SheetPages.Papers papers = pages.all();
        say(
                "papers %d + %d + %d bytes"
                        .formatted(
                                papers.sheets().length,
                                papers.key().length,
                                papers.slipFinder().length),
                bean.getProcessCpuTime());
    }

    private static void say(final String what, final long busy) {
        final long ran = ManagementFactory.getRuntimeMXBean().getUptime();
        System.out.printf(
                Locale.ROOT, "%s: %.1f s, busy %.1f s%n", what, ran / MILLIS, busy / NANOS);
    }
}
