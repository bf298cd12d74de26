package wireworthy.evening.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The summary as CSV by RFC 4180, with a byte order mark. A cell that a spreadsheet would work as a
 * formula gets an apostrophe before it.
 */
public final class SummaryCsv {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final String FORMULA = "=+-@\t\r";

    private SummaryCsv() {}

    /** A row for each problem, skill, slip, wrong answer without one and wish for help. */
    public static String text(final Summary summary) {
        final List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("what", "which", "right", "wrong", "open", "answers", "who"));
        summary.problems().forEach(each -> rows.add(missed("problem", each)));
        summary.skills().forEach(each -> rows.add(missed("skill", each)));
        for (final SlipSeen slip : summary.slips()) {
            final String answers = String.valueOf(slip.answers());
            rows.add(List.of("slip", slip.words(), "", "", "", answers, who(slip.learners())));
        }
        for (final Handed wrong : summary.unexplained()) {
            rows.add(List.of("wrong, no known slip", which(wrong), "", "1", "", "1", wrong.who()));
        }
        for (final Handed note : summary.notes()) {
            rows.add(List.of("a note, open", which(note), "", "", "1", "1", note.who()));
        }
        final String missing = String.valueOf(summary.missing());
        rows.add(List.of("learners", "handed in nothing", "", "", "", missing, ""));
        for (final HelpWanted help : summary.help()) {
            final String which = help.problem() + " " + help.skill();
            rows.add(List.of("help wanted", which, "", "", "", "", who(help.names())));
        }
        return rows.stream()
                .map(row -> row.stream().map(SummaryCsv::cell).collect(Collectors.joining(",")))
                .collect(Collectors.joining("\r\n", BYTE_ORDER_MARK, "\r\n"));
    }

    private static String which(final Handed answer) {
        return answer.problem() + " " + answer.skill() + ": " + answer.typed();
    }

    private static List<String> missed(final String what, final Missed each) {
        return List.of(
                what,
                each.label(),
                String.valueOf(each.right()),
                String.valueOf(each.wrong()),
                String.valueOf(each.open()),
                "",
                "");
    }

    private static String who(final List<String> names) {
        return String.join("; ", names);
    }

    private static String cell(final String text) {
        final boolean formula = !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
        return "\"" + (formula ? "'" : "") + text.replace("\"", "\"\"") + "\"";
    }
}
