package wireworthy.evening.summary;

import java.util.List;
import java.util.stream.Collectors;
import wireworthy.paper.Block;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.texts.TextBundle;

/** The summary of an evening on paper. */
public final class SummaryPages {
    private static final TextBundle TEXTS = new TextBundle("evening");

    private SummaryPages() {}

    /** As a PDF; the same summary always gives the same bytes. */
    public static byte[] pdf(final Summary summary, final PaperSize size) {
        final String mark = summary.sheet().mark();
        final Pages pages =
                new Pages(
                        TEXTS.of("summary.title"), size, TEXTS.of("foot", "mark", mark), "evening");
        final Block body = pages.body();
        body.say("h1", TEXTS.of("summary.title"));
        body.say("p", TEXTS.of("summary.of", "mark", mark, "count", summary.handedIn()));
        body.say("p", TEXTS.of("summary.missing", "count", summary.missing()));
        slips(body, summary.slips());
        handed(body, "summary.unexplained", summary.unexplained());
        handed(body, "summary.notes", summary.notes());
        missed(body, "summary.problems", summary.problems());
        missed(body, "summary.skills", summary.skills());
        help(body, summary.help());
        return pages.pdf();
    }

    private static void slips(final Block body, final List<SlipSeen> slips) {
        body.say("h2", TEXTS.of("summary.slips")).say("p", "small", TEXTS.of("summary.slips.note"));
        final Block table = body.add("table");
        final Block head = table.add("thead").add("tr");
        head.say("th", "column-slip", TEXTS.of("summary.slip"))
                .say("th", "number column-answers", TEXTS.of("summary.answers"));
        head.say("th", TEXTS.of("summary.who"));
        final Block rows = table.add("tbody");
        for (final SlipSeen slip : slips) {
            rows.add("tr")
                    .say("td", slip.words())
                    .say("td", "number", String.valueOf(slip.answers()))
                    .say("td", names(slip.learners()));
        }
    }

    private static void handed(final Block body, final String title, final List<Handed> all) {
        if (all.isEmpty()) {
            return;
        }
        body.say("h2", TEXTS.of(title)).say("p", "small", TEXTS.of(title + ".note"));
        for (final Handed each : all) {
            body.say(
                    "p",
                    each.problem()
                            + " "
                            + each.skill()
                            + ": "
                            + each.typed()
                            + " · "
                            + names(List.of(each.who())));
        }
    }

    private static void missed(final Block body, final String title, final List<Missed> all) {
        body.say("h2", TEXTS.of(title)).say("p", "small", TEXTS.of(title + ".note"));
        final Block table = body.add("table", "narrow");
        final Block head = table.add("thead").add("tr").say("th", "");
        List.of("right", "wrong", "open")
                .forEach(word -> head.say("th", "number", TEXTS.of("summary." + word)));
        final Block rows = table.add("tbody");
        all.forEach(each -> row(rows.add("tr"), each));
        row(rows.add("tr", "sums"), Missed.sum(TEXTS.of("summary.sum"), all));
    }

    private static void row(final Block row, final Missed each) {
        row.say("td", each.label())
                .say("td", "number", String.valueOf(each.right()))
                .say("td", "number", String.valueOf(each.wrong()))
                .say("td", "number", String.valueOf(each.open()));
    }

    private static void help(final Block body, final List<HelpWanted> help) {
        body.say("h2", TEXTS.of("summary.help"));
        if (help.isEmpty()) {
            body.say("p", TEXTS.of("summary.help.none"));
        }
        for (final HelpWanted each : help) {
            body.say("p", each.problem() + " " + each.skill() + ": " + names(each.names()));
        }
    }

    /** Each number stays on one line with its name. */
    private static String names(final List<String> labels) {
        return labels.stream()
                .map(label -> label.replaceFirst(" ", "\u00a0"))
                .collect(Collectors.joining(", "));
    }
}
